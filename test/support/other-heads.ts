import { fromExact, type Head, ratio, type UnprovedSetting, wormRatioOf } from "../../src/index.ts";

/** A head with one thing other than it was: a circle, a plate, a face, a pin, the small crank, a dial, the worm, the gears. */
export function otherHeads(head: Head, setting: UnprovedSetting): readonly Head[] {
  const { plates, directPlates, dial, gearing, gears } = head;
  const { smallCrank, ...withoutSmall } = head;
  const circlesOf = (change: (circles: readonly number[]) => readonly number[]): Head => ({
    ...head,
    plates: plates.map((plate) => ({
      ...plate,
      faces: plate.faces.map((face) => ({ ...face, circles: change(face.circles) })),
    })),
  });
  const mostCircle = setting.circle ?? 2;
  return [
    head,
    { ...head, name: "as it was, under another name" },
    circlesOf((circles) => circles.filter((circle) => circle !== setting.circle)),
    circlesOf((circles) => circles.map((circle) => (circle === setting.circle ? 2 * circle : circle))),
    circlesOf((circles) => [...circles, mostCircle + 1, 3 * mostCircle]),
    ...(setting.method === "compound"
      ? [circlesOf((circles) => circles.filter((circle) => circle !== setting.second.circle))]
      : []),
    { ...head, plates: plates.map((plate) => ({ ...plate, name: `${plate.name} of another` })) },
    { ...head, plates: plates.toReversed().map((plate, index) => ({ ...plate, name: plates[index]?.name ?? plate.name })) },
    {
      ...head,
      plates: plates.map((plate) => ({
        ...plate,
        faces: plate.faces.toReversed().map((face, index) => ({ ...face, name: plate.faces[index]?.name ?? null })),
      })),
    },
    { ...head, rearPin: !head.rearPin },
    ...(smallCrank ? [{ ...head, smallCrank: { ...smallCrank, ratio: smallCrank.ratio + 1 } }, withoutSmall] : []),
    { ...head, directPlates: directPlates.map(({ name, holes }) => ({ name, holes: 2 * holes })) },
    { ...head, directPlates: directPlates.map(({ name, holes }) => ({ name, holes: holes + 1 })) },
    { ...head, dial: dial && { ...dial, vernierLines: 2 * dial.vernierLines } },
    { ...head, dial: dial && { ...dial, marksPerTurn: dial.marksPerTurn + 1 } },
    { ...head, wormRatio: ratio(fromExact(wormRatioOf(head)).add(1).toFraction()) },
    { ...head, wormRatio: ratio(fromExact(wormRatioOf(head)).mul(2).toFraction()) },
    { ...head, gears: gears.slice(1) },
    { ...head, idlers: [] },
    { ...head, idlers: [30] },
    { ...head, idlers: null },
    { ...head, gears: [...gears, 19] },
    { ...head, gearing: null },
    ...(gearing === null
      ? []
      : [
          {
            ...head,
            gearing: {
              ...gearing,
              idlersWithCrank: {
                onePair: gearing.idlersWithCrank.onePair + 1,
                twoPairs: gearing.idlersWithCrank.twoPairs + 1,
              },
            },
          },
          {
            ...head,
            gearing: {
              ...gearing,
              idlersWithCrank: { ...gearing.idlersWithCrank, onePair: gearing.idlersWithCrank.onePair + 2 },
            },
          },
        ]),
  ];
}
