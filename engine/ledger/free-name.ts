/** A name for a new group that no other group has had. */

/** `whites`, or `whites 2`, `whites 3` and so on where the groups so far have used it. */
export const freeName = (groups: readonly { readonly name: string }[], wanted: string): string => {
  const taken = new Set(groups.map((group) => group.name));
  if (!taken.has(wanted)) return wanted;
  let number = 2;
  while (taken.has(`${wanted} ${number}`)) number += 1;
  return `${wanted} ${number}`;
};
