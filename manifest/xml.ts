import type { ManifestSource } from "./source";

/** The add-in-only manifest. The order of its elements is prescribed; `manifestFaults` checks it. */
export function manifestXml(source: ManifestSource): string {
  const url = (file: string): string => attribute(source.base + file);
  return `<?xml version="1.0" encoding="UTF-8"?>
<OfficeApp xmlns="http://schemas.microsoft.com/office/appforoffice/1.1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xmlns:bt="http://schemas.microsoft.com/office/officeappbasictypes/1.0" xsi:type="TaskPaneApp">
  <Id>${source.id}</Id>
  <Version>${source.version}.0</Version>
  <ProviderName>${attribute(source.provider)}</ProviderName>
  <DefaultLocale>${source.locale}</DefaultLocale>
  <DisplayName DefaultValue="${attribute(source.title)}"/>
  <Description DefaultValue="${attribute(source.about)}"/>
  <IconUrl DefaultValue="${url(source.icon(32))}"/>
  <HighResolutionIconUrl DefaultValue="${url(source.icon(64))}"/>
  <SupportUrl DefaultValue="${url(source.front)}"/>
  <Hosts>
    <Host Name="Workbook"/>
  </Hosts>
  <Requirements>
    <Sets DefaultMinVersion="1.1">
${source.requires.map(({ set, version }) => `      <Set Name="${set}" MinVersion="${version}"/>`).join("\n")}
    </Sets>
  </Requirements>
  <DefaultSettings>
    <SourceLocation DefaultValue="${url(source.page)}"/>
  </DefaultSettings>
  <Permissions>ReadWriteDocument</Permissions>
  <VersionOverrides xmlns="http://schemas.microsoft.com/office/taskpaneappversionoverrides" xsi:type="VersionOverridesV1_0">
    <Hosts>
      <Host xsi:type="Workbook">
        <Runtimes>
          <Runtime resid="Page.Url" lifetime="long"/>
        </Runtimes>
        <AllFormFactors>
          <ExtensionPoint xsi:type="CustomFunctions">
            <Script>
              <SourceLocation resid="Functions.Script.Url"/>
            </Script>
            <Page>
              <SourceLocation resid="Page.Url"/>
            </Page>
            <Metadata>
              <SourceLocation resid="Functions.Metadata.Url"/>
            </Metadata>
            <Namespace resid="Functions.Namespace"/>
          </ExtensionPoint>
        </AllFormFactors>
${desktop(source)}
      </Host>
    </Hosts>
    <Resources>
      <bt:Images>
${ribbonSizes.map((size) => `        <bt:Image id="Icon.${size}" DefaultValue="${url(source.icon(size))}"/>`).join("\n")}
      </bt:Images>
      <bt:Urls>
        <bt:Url id="Functions.Script.Url" DefaultValue="${url(source.script)}"/>
        <bt:Url id="Functions.Metadata.Url" DefaultValue="${url(source.metadata)}"/>
        <bt:Url id="Page.Url" DefaultValue="${url(source.page)}"/>
      </bt:Urls>
      <bt:ShortStrings>
        <bt:String id="Functions.Namespace" DefaultValue="${source.namespace}"/>
        <bt:String id="Group.Label" DefaultValue="${attribute(source.title)}"/>
        <bt:String id="Button.Label" DefaultValue="${attribute(source.button.label)}"/>
      </bt:ShortStrings>
      <bt:LongStrings>
        <bt:String id="Button.Tip" DefaultValue="${attribute(source.button.tip)}"/>
      </bt:LongStrings>
    </Resources>
  </VersionOverrides>
</OfficeApp>
`;
}

export const ribbonSizes = [16, 32, 80] as const;

// A shared runtime must not name a TaskpaneId, and its page is the function file too.
const desktop = (source: ManifestSource): string => `        <DesktopFormFactor>
          <FunctionFile resid="Page.Url"/>
          <ExtensionPoint xsi:type="PrimaryCommandSurface">
            <OfficeTab id="TabHome">
              <Group id="${source.namespace}.Group">
                <Label resid="Group.Label"/>
${icon(16)}
                <Control xsi:type="Button" id="${source.namespace}.Open">
                  <Label resid="Button.Label"/>
                  <Supertip>
                    <Title resid="Button.Label"/>
                    <Description resid="Button.Tip"/>
                  </Supertip>
${icon(18)}
                  <Action xsi:type="ShowTaskpane">
                    <SourceLocation resid="Page.Url"/>
                  </Action>
                </Control>
              </Group>
            </OfficeTab>
          </ExtensionPoint>
        </DesktopFormFactor>`;

function icon(indent: number): string {
  const space = " ".repeat(indent);
  const images = ribbonSizes.map(
    (size) => `${space}  <bt:Image size="${size}" resid="Icon.${size}"/>`,
  );
  return [`${space}<Icon>`, ...images, `${space}</Icon>`].join("\n");
}

const attribute = (text: string): string =>
  text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
