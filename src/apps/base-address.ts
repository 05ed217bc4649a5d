import { unusable } from "../measures/cannot-answer";

/** Microsoft's limit for an address in a manifest, less room for the longest of our file names. */
const LONGEST = 2000;

/**
 * The address a folder of files will be served at, with its slash at the end. Refuses, with a sentence, anything but a
 * plain https address: Excel loads add-ins from https only.
 */
export function baseAddress(given: string): string {
  let url: URL;
  try {
    url = new URL(given);
  } catch {
    throw unusable(
      `base: "${given}" is no address; it looks like https://example.org/syrup/`,
    );
  }
  if (url.protocol !== "https:")
    throw unusable(
      `base: "${given}" must start with https://, because Excel loads add-ins from https only`,
    );
  if (url.search !== "" || url.hash !== "" || /[?#]$/.test(given))
    throw unusable(
      `base: "${given}" must be a folder's address, without ? or #`,
    );
  if (url.username !== "" || url.password !== "")
    throw unusable(`base: "${given}" must not hold a name or password`);
  const address = url.href.endsWith("/") ? url.href : `${url.href}/`;
  if (address.length > LONGEST)
    throw unusable(`base: longer than ${LONGEST} characters`);
  return address;
}
