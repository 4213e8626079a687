/** A place by its coordinates, from words. */
import type { Place } from './provider.ts';

const side = String.raw`([-−+]?\d{1,3}(?:\.\d{1,10})?)\s*°?\s*`;
const pattern = new RegExp(String.raw`^${side}(n|s|north|south)?[\s,;]+${side}(e|w|east|west)?$`, 'i');

const degrees = (number: string, letter: string | undefined): number => {
  const value = Number(number.replace('−', '-'));
  const signed = /^[sw]/i.test(letter ?? '') ? -Math.abs(value) : value;
  return Math.round(signed * 100) / 100;
};

/** `44.1 -73.2`, `44.1, -73.2` or `44.1 N 73.2 W`, rounded to two decimals; null for anything else. */
export const readPlace = (words: string): Place | null => {
  const [, north, northLetter, east, eastLetter] = pattern.exec(words.trim()) ?? [];
  if (north === undefined || east === undefined) return null;
  const place = { latitude: degrees(north, northLetter), longitude: degrees(east, eastLetter) };
  return Math.abs(place.latitude) <= 90 && Math.abs(place.longitude) <= 180 ? place : null;
};

/** The same as text: `44.1 -73.2`. */
export const sayPlace = ({ latitude, longitude }: Place): string => `${latitude} ${longitude}`;
