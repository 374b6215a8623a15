import { isOperationCancelled } from 'langium';
import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';

/** A request that its sender gave up ends as the protocol says, which is no failure. */
export async function orCancelled<T>(work: Promise<T>): Promise<T | ResponseError<never>> {
    try {
        return await work;
    } catch (error) {
        if (isOperationCancelled(error)) {
            return new ResponseError<never>(LSPErrorCodes.RequestCancelled, 'The request was given up.');
        }
        throw error;
    }
}
