/** Masses that can be typed, by unit; so that grams taken for kilograms are asked about where they are typed. */

/** Of a parcel, 1000 kg. Our choice, as sealing holds it; the pound by its definition, 0.45359237 kg. */
export const PARCEL_MOST = { kg: 1000, g: 1_000_000, lb: 2204 } as const;

/** Of an item, 200 kg, as an order takes it. Our choice. */
export const ITEM_MOST: Readonly<Record<string, number>> = { kg: 200, g: 200_000, lb: 440, oz: 7054 };
