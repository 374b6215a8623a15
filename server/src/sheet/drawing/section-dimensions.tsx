import { r } from './frame.js';

interface WidthProps { readonly x: number; readonly width: number; readonly y: number; readonly text: string }

export function Width({ x, width, y, text }: WidthProps) {
    return (
        <g class="dimensions">
            <path class="thin" d={`M${r(x)} ${r(y)}h${r(width)}M${r(x)} ${r(y - 4)}v8M${r(x + width)} ${r(y - 4)}v8`} />
            <path class="tick" d={`M${r(x - 2.5)} ${r(y + 2.5)}l5 -5M${r(x + width - 2.5)} ${r(y + 2.5)}l5 -5`} />
            <text x={r(x + width / 2)} y={r(y - 2)} text-anchor="middle">{text}</text>
        </g>
    );
}

interface HeightProps { readonly y: number; readonly height: number; readonly x: number; readonly text: string }

export function Height({ y, height, x, text }: HeightProps) {
    return (
        <g class="dimensions">
            <path class="thin" d={`M${r(x)} ${r(y)}v${r(height)}M${r(x - 4)} ${r(y)}h8M${r(x - 4)} ${r(y + height)}h8`} />
            <path class="tick" d={`M${r(x - 2.5)} ${r(y + 2.5)}l5 -5M${r(x - 2.5)} ${r(y + height + 2.5)}l5 -5`} />
            <text transform={`translate(${r(x - 2)} ${r(y + height / 2)}) rotate(-90)`} text-anchor="middle">{text}</text>
        </g>
    );
}
