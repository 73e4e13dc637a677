export declare const chromiumNames: readonly string[]
export declare function findProgram(names: readonly string[]): string | undefined
export declare function findChromium(): string | undefined
