/** The form of the row at an address of the table. */
export const rowHref = (address: string): string =>
  `/protocol/draft/row?address=${encodeURIComponent(address)}`;
