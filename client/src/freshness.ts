/** Whether what the preview shows is what a new request would bring: the versions of one document. */
export class Freshness {
    private shown: number | undefined;
    private noticed: number | undefined;

    /** True where the content shown was made for this version of the text. */
    has(version: number): boolean {
        return this.shown === version;
    }

    /** The page now shows the content made for this version. */
    showing(version: number): void {
        this.shown = version;
    }

    /**
     * The server has results for this version. The first notice of a version is the echo of the text's
     * own change; a further one means that something else has changed (an included file).
     */
    notice(version: number): void {
        if (this.noticed === version) {
            this.shown = undefined;
        }
        this.noticed = version;
    }
}
