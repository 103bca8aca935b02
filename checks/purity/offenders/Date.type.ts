export type Offence = { readonly at: Date };
