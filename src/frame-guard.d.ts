export declare const frameGuard: string;
