/** It can be read without any script. */
export const csr = false;
