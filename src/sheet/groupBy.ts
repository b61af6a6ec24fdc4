type GroupBy = <Item>(items: Iterable<Item>, keyOf: (item: Item, index: number) => PropertyKey) => object;

/** The engine groups with a method that browsers have since 2023 or 2024 and Node since 21. */
export function provideGroupBy(): void {
  const objects = Object as unknown as { groupBy?: GroupBy };
  objects.groupBy ??= (items, keyOf) => {
    const groups = Object.create(null) as Record<PropertyKey, unknown[]>;
    Array.from(items).forEach((item, index) => (groups[keyOf(item, index)] ??= []).push(item));
    return groups;
  };
}
