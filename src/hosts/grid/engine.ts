import {
  LocaleType,
  LogLevel,
  Univer,
  type IUniverConfig,
  type Plugin,
  type PluginCtor,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import "@univerjs/sheets/facade";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets-formula/facade";
import "@univerjs/sheets-table/facade";
import "@univerjs/sheets-note/facade";
import "@univerjs/sheets-data-validation/facade";

import { cureEmptyTexts } from "./empty-text-cure";
import { keepFormulas } from "./recalculation/keep-formulas";
import { cureTableReferences } from "./table-reference-cure";

type PluginEntry =
  | PluginCtor<Plugin>
  | [PluginCtor<Plugin>, ConstructorParameters<PluginCtor<Plugin>>[0]];

export interface Preset {
  readonly plugins: readonly PluginEntry[];
}

export interface Engine {
  readonly univer: Univer;
  readonly api: FUniver;
  /** Goes up whenever formulas have changed, or may have, by the last calculation. */
  readonly formulasEdition: () => number;
}

/** Starts the engine with presets. Presets repeat plugins; the last mention of one configures it. */
export function startEngine(
  presets: readonly Preset[],
  config: Partial<IUniverConfig> = {},
): Engine {
  cureEmptyTexts();
  cureTableReferences();
  const univer = new Univer({
    logLevel: LogLevel.WARN,
    locale: LocaleType.EN_US,
    ...config,
  });
  const plugins = new Map<string, PluginEntry>();
  for (const entry of presets.flatMap((preset) => preset.plugins)) {
    const { pluginName } = Array.isArray(entry) ? entry[0] : entry;
    plugins.set(pluginName, entry);
  }
  for (const entry of plugins.values()) {
    if (Array.isArray(entry)) univer.registerPlugin(entry[0], entry[1]);
    else univer.registerPlugin(entry);
  }
  const formulasEdition = keepFormulas(univer.__getInjector());
  return { univer, api: FUniver.newAPI(univer), formulasEdition };
}
