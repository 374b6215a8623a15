import type { EditorOffer } from '../protocol.js';

/** What the editor can be led to from lenses and hints. */
export class EditorCommands {
    private offered: EditorOffer = {};

    offer(offer: EditorOffer | undefined): void {
        this.offered = offer ?? {};
    }

    has(command: string): boolean {
        return this.offered.commands?.includes(command) === true;
    }

    get lenses(): boolean {
        return this.offered.lenses !== false;
    }
}
