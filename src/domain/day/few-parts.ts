/** Below this many parts a standard deviation says nothing, and a mean little: each part is shown, not their spread. */
export const FEW_PARTS = 5;
