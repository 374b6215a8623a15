import { timberClasses } from '../../catalog/tables/timber-classes.js';
import { escape } from '../markdown.js';
import { sourceOf, type HoverOf } from './place.js';

/** A strength class: its characteristic values and where they come from. */
export const hoverStrengthClass: HoverOf = ({ word }) => {
    const strength = word && timberClasses.get(word.text);
    if (!word || !strength) {
        return undefined;
    }
    const { name, fm_k, ft0_k, fc0_k, fc90_k, fv_k, E0_mean, E0_05, G_mean, rho_k, rho_mean, origin } = strength;
    const values = [
        ['f_m,k', fm_k, 'MPa'], ['f_t,0,k', ft0_k, 'MPa'], ['f_c,0,k', fc0_k, 'MPa'], ['f_c,90,k', fc90_k, 'MPa'], ['f_v,k', fv_k, 'MPa'],
        ['E_0,mean', E0_mean, 'MPa'], ['E_0,05', E0_05, 'MPa'], ['G_mean', G_mean, 'MPa'], ['ρ_k', rho_k, 'kg/m³'], ['ρ_mean', rho_mean, 'kg/m³']
    ] as const;
    const lines = values.map(([symbol, value, unit]) => `${symbol.padEnd(9)} ${String(value).padStart(6)} ${unit}`);
    return { markdown: [`**${escape(name)}** (${escape(origin)})`, ['```text', ...lines, '```'].join('\n')].join('\n\n'), source: sourceOf(word) };
};
