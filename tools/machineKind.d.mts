export function machineKind(): string;
