/** How many orders of n different values have k pairs that fall, for each k. */
function ordersByFalls(n: number): readonly number[] {
  let orders: readonly number[] = [1];
  for (let count = 2; count <= n; count += 1) {
    // The count-th value goes into any of `count` places and makes 0 to count - 1 further falls.
    const next = new Array<number>(orders.length + count - 1).fill(0);
    for (const [falls, ways] of orders.entries())
      for (let more = 0; more < count; more += 1) next[falls + more] = (next[falls + more] ?? 0) + ways;
    orders = next;
  }
  return orders;
}

/**
 * P(S >= s) over all orders of n different values, each as likely as the next: the exact one-sided tail of Kendall's S.
 * Gilbert 1987, table A18: n = 4, S = 6: .0417.
 */
export function exactTail(n: number, s: number): number {
  const orders = ordersByFalls(n);
  const pairs = orders.length - 1;
  const all = orders.reduce((total, ways) => total + ways, 0);
  const atLeast = orders.reduce((total, ways, falls) => total + (pairs - 2 * falls >= s ? ways : 0), 0);
  return atLeast / all;
}
