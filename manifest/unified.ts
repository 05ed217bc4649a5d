import type { ManifestSource } from "./source";
import { ribbonSizes } from "./xml";

/** The schema version Microsoft's samples of 2026 use: the lowest that knows everything said here. */
const SCHEMA = "1.25";

/** The unified manifest, for those who install by it; the functions are described in the same functions.json. */
export function unifiedManifest(source: ManifestSource): object {
  const url = (file: string): string => source.base + file;
  const icons = ribbonSizes.map((size) => ({
    size,
    url: url(source.icon(size)),
  }));
  const [shared] = source.requires;
  if (shared?.set !== "SharedRuntime")
    throw new Error("The manifest source names SharedRuntime first");
  return {
    $schema: `https://developer.microsoft.com/json-schemas/teams/v${SCHEMA}/MicrosoftTeams.schema.json`,
    manifestVersion: SCHEMA,
    id: source.unifiedId,
    version: source.version,
    name: { short: source.title, full: source.title },
    description: { short: source.about, full: source.about },
    developer: {
      name: source.provider,
      websiteUrl: url(source.front),
      privacyUrl: url(`${source.front}#what-is-kept`),
      termsOfUseUrl: url(`${source.front}#terms`),
    },
    icons: { color: "color.png", outline: "outline.png" },
    accentColor: source.accent,
    localizationInfo: {
      defaultLanguageTag: source.locale.toLowerCase(),
      additionalLanguages: [],
    },
    authorization: {
      permissions: {
        resourceSpecific: [
          { name: "Document.ReadWrite.User", type: "Delegated" },
        ],
      },
    },
    validDomains: [new URL(source.base).host],
    extensions: [
      {
        requirements: {
          scopes: ["workbook"],
          capabilities: source.requires.map(({ set, version }) => ({
            name: set,
            minVersion: version,
          })),
        },
        runtimes: [
          {
            id: "SharedRuntime",
            type: "general",
            lifetime: "long",
            code: { page: url(source.page), script: url(source.script) },
            // With the shared runtime an action that opens the page names no view.
            actions: [{ id: "OpenPane", type: "openPage" }],
            customFunctions: {
              namespace: { id: source.namespace, name: source.namespace },
              metadataUrl: url(source.metadata),
            },
          },
        ],
        ribbons: [
          {
            contexts: ["default"],
            tabs: [
              {
                builtInTabId: "TabHome",
                groups: [
                  {
                    id: `${source.namespace}.Group`,
                    label: source.title,
                    icons,
                    controls: [
                      {
                        id: `${source.namespace}.Open`,
                        type: "button",
                        label: source.button.label,
                        icons,
                        supertip: {
                          title: source.button.label,
                          description: source.button.tip,
                        },
                        actionId: "OpenPane",
                      },
                    ],
                  },
                ],
              },
            ],
          },
        ],
        alternates: [
          {
            alternateIcons: {
              icon: { size: 32, url: url(source.icon(32)) },
              highResolutionIcon: { size: 64, url: url(source.icon(64)) },
            },
          },
        ],
      },
    ],
  };
}
