import { X509Certificate } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { unusable } from "../../measures/cannot-answer";

export interface CertificatePair {
  readonly cert: Buffer;
  readonly key: Buffer;
  /** The command that makes this machine trust it; undefined when it does already. */
  readonly trust: string | undefined;
}

/**
 * A certificate for localhost, made on the spot where there is none that is still good tomorrow. It lies in the user's
 * own folder, where Microsoft's tool looks for it; trusting it stays the user's own step.
 */
export async function certificate(
  root: string,
  folder?: string,
): Promise<CertificatePair> {
  const tool = certificateTool(root);
  const at = folder ?? tool.certificateDirectory;
  const files = {
    authority: path.join(at, tool.caCertificateFileName),
    cert: path.join(at, tool.localhostCertificateFileName),
    key: path.join(at, tool.localhostKeyFileName),
  };
  if (!isGood(files)) {
    // The tool never replaces one that is there.
    tool.deleteCertificateFiles(at);
    await tool.generateCertificates(
      files.authority,
      files.cert,
      files.key,
      DAYS_GOOD,
      ["localhost", "127.0.0.1"],
    );
  }
  return {
    cert: readFileSync(files.cert),
    key: readFileSync(files.key),
    trust: isTrusted(tool) ? undefined : "npx office-addin-dev-certs install",
  };
}

const DAYS_GOOD = 30;
const A_DAY = 24 * 60 * 60 * 1000;

function isGood(files: Readonly<Record<string, string>>): boolean {
  if (!Object.values(files).every((file) => existsSync(file))) return false;
  try {
    const { validTo } = new X509Certificate(readFileSync(files["cert"] ?? ""));
    return Date.parse(validTo) - Date.now() > A_DAY;
  } catch {
    return false;
  }
}

interface CertificateTool {
  readonly certificateDirectory: string;
  readonly caCertificateFileName: string;
  readonly localhostCertificateFileName: string;
  readonly localhostKeyFileName: string;
  generateCertificates(
    authority: string,
    cert: string,
    key: string,
    days: number,
    domains: readonly string[],
  ): Promise<void>;
  deleteCertificateFiles(folder: string): void;
  verifyCertificates(): boolean;
}

// Loaded here and nowhere else: no build and no test run of ours needs it.
function certificateTool(root: string): CertificateTool {
  const load = createRequire(path.join(root, "package.json"));
  try {
    return {
      ...(load("office-addin-dev-certs") as CertificateTool),
      ...(load("office-addin-dev-certs/lib/defaults") as CertificateTool),
    };
  } catch {
    throw unusable(
      "The package that makes certificates is not installed: run `npm ci` in the project's folder, without leaving out development packages.",
    );
  }
}

/** It asks the machine's own store, by a command that not every machine has. */
function isTrusted(tool: CertificateTool): boolean {
  try {
    return tool.verifyCertificates();
  } catch {
    return false;
  }
}
