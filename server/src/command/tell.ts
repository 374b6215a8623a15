/** A line for the person at the terminal, beside what is printed for readers and programs. */
export function tell(message: string): void {
    process.stderr.write(`padstone: ${message}\n`);
}
