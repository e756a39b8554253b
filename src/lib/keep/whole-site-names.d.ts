export declare const wholeSite: string;
export declare const notKept: readonly string[];
