import { DefaultWorkspaceManager } from 'langium';

/** Ready at once: a folder may hold anything, and a job says itself what it includes. */
export class NoWorkspaceManager extends DefaultWorkspaceManager {
    protected override performStartup(): Promise<[]> {
        this._ready.resolve();
        return Promise.resolve([]);
    }
}
