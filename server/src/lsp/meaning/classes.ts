/** What a class, a size or a category stands for, as Markdown: the values that the checks use, and where they come from. */
import { boltGrades, threadOrigins, threads } from '../../catalog/bolts.js';
import { rolledNames, rolledSection } from '../../catalog/rolled-sections.js';
import { steelGrades, steelStrength } from '../../catalog/steel.js';
import { psiTable } from '../../catalog/tables/psi.js';
import { timberClasses } from '../../catalog/tables/timber-classes.js';
import { escape } from '../markdown.js';

type Row = readonly [symbol: string, value: number | undefined, unit: string];

function table(title: string, origin: string, rows: readonly Row[]): string {
    const lines = rows.filter(([, value]) => value !== undefined)
        .map(([symbol, value, unit]) => `${symbol.padEnd(9)} ${String(Number(value!.toPrecision(4))).padStart(8)} ${unit}`);
    return [`**${escape(title)}** (${escape(origin)})`, ['```text', ...lines, '```'].join('\n')].join('\n\n');
}

export function timberClass(name: string): string | undefined {
    const strength = timberClasses.get(name);
    if (!strength) {
        return undefined;
    }
    const { fm_k, ft0_k, fc0_k, fc90_k, fv_k, E0_mean, E0_05, G_mean, rho_k, rho_mean, origin } = strength;
    return table(name, origin, [
        ['f_m,k', fm_k, 'MPa'], ['f_t,0,k', ft0_k, 'MPa'], ['f_c,0,k', fc0_k, 'MPa'], ['f_c,90,k', fc90_k, 'MPa'], ['f_v,k', fv_k, 'MPa'],
        ['E_0,mean', E0_mean, 'MPa'], ['E_0,05', E0_05, 'MPa'], ['G_mean', G_mean, 'MPa'], ['ρ_k', rho_k, 'kg/m³'], ['ρ_mean', rho_mean, 'kg/m³']
    ]);
}

/** Up to 40 mm thick. */
export function steelClass(name: string): string | undefined {
    const strength = steelStrength(name, 40);
    return strength && table(name, strength.origin, [['f_y', strength.fy, 'MPa'], ['f_u', strength.fu, 'MPa'], ['E', strength.E, 'MPa'], ['G', strength.G, 'MPa']]);
}

export function boltSize(name: string): string | undefined {
    const thread = threads.get(name);
    return thread && table(name, threadOrigins.As, [
        ['d', thread.d, 'mm'], ['pitch', thread.pitch, 'mm'], ['A_s', thread.As, 'mm²'], ['flats', thread.acrossFlats, 'mm'],
        ['head', thread.headHeight, 'mm'], ['nut', thread.nutHeight, 'mm'],
        ...thread.washers.map(({ standard, outer }): Row => [standard, outer, 'mm outer'])
    ]);
}

export function boltGrade(name: string): string | undefined {
    const grade = boltGrades.get(name);
    return grade && table(`grade ${name}`, grade.origin, [['f_yb', grade.fyb, 'MPa'], ['f_ub', grade.fub, 'MPa'], ['α_v', grade.alphaV, 'thread in the shear plane']]);
}

export function rolled(designation: string): string | undefined {
    const section = rolledSection(designation);
    return section && table(section.name, section.origin, [
        ['h', section.h, 'mm'], ['b', section.b, 'mm'], ['t_w', section.tw, 'mm'], ['t_f', section.tf, 'mm'], ['A', section.A / 100, 'cm²'],
        ['I_y', section.Iy / 1e4, 'cm⁴'], ['W_el,y', section.Wely / 1e3, 'cm³'], ['W_pl,y', section.Wply / 1e3, 'cm³']
    ]);
}

/** EN 1991-1-1 Table 6.1 and 6.9, in a few words, from memory; ψ from the table that the combinations use. */
const uses: Readonly<Record<string, string>> = {
    A: 'rooms to live in', B: 'offices', C: 'where people gather', D: 'shops', E: 'storage', F: 'traffic of vehicles up to 30 kN', G: 'traffic of vehicles up to 160 kN', H: 'roofs that are only walked on for repair'
};

export function loadCategory(name: string): string | undefined {
    const entry = (psiTable as Readonly<Record<string, { readonly psi: readonly number[]; readonly origin: string }>>)[`imposed ${name}`];
    return entry && uses[name] && `**imposed ${name}**: ${uses[name]} (EN 1991-1-1 Table 6.1, from memory)\n\nψ₀ ${entry.psi[0]}, ψ₁ ${entry.psi[1]}, ψ₂ ${entry.psi[2]} (${escape(entry.origin)})`;
}

export const categories: readonly string[] = Object.keys(uses);
export const boltSizes: readonly string[] = [...threads.keys()];
export const boltGradeNames: readonly string[] = [...boltGrades.keys()];
export const timberClassNames: readonly string[] = [...timberClasses.keys()];
export { rolledNames, steelGrades };

/** In one line, for a list: `f_m,k 24 MPa, E 11000 MPa, 350 kg/m³`. */
export function inOneLine(name: string): string | undefined {
    const timber = timberClasses.get(name);
    const thread = threads.get(name);
    const grade = boltGrades.get(name);
    const steel = steelStrength(name, 40);
    return timber ? `f_m,k ${timber.fm_k} MPa, E ${timber.E0_mean} MPa, ρ_k ${timber.rho_k} kg/m³`
        : thread ? `A_s ${thread.As} mm², ${thread.acrossFlats} mm across flats`
            : grade ? `f_yb ${grade.fyb} MPa, f_ub ${grade.fub} MPa`
                : steel ? `f_y ${steel.fy} MPa, f_u ${steel.fu} MPa`
                    : undefined;
}
