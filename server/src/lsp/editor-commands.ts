/** Whether the editor has the commands that lenses and hints lead to. */
export class EditorCommands {
    private has = false;

    get offered(): boolean {
        return this.has;
    }

    offer(commands: boolean | undefined): void {
        this.has = commands === true;
    }
}
