import type { ReactNode } from "react";
import { Checkbox } from "@fluentui/react-components";
import {
  type Audience,
  audiences,
  type Ticks,
} from "../../../sheets/handover/audiences";
import { type Topic, topics } from "../../../sheets/handover/topics";
import { Fold } from "../guide/fold";
import { usePaneStyles } from "../styles";

/** What the reader sees: less at will, and more only by a tick that names it. */
export function TopicTicks(props: {
  readonly audience: Audience;
  readonly ticks: Ticks;
  readonly change: (ticks: Ticks) => void;
}): ReactNode {
  const { audience, ticks, change } = props;
  const pane = usePaneStyles();
  const seen = audiences[audience].sees;
  const others = (Object.keys(topics) as Topic[]).filter(
    (topic) => !seen.includes(topic),
  );
  const toggled = (
    list: readonly Topic[],
    topic: Topic,
    isIn: boolean,
  ): readonly Topic[] =>
    isIn ? [...list, topic] : list.filter((one) => one !== topic);
  return (
    <>
      <Fold title="Hide more">
        <div role="group" aria-label="Shown to this reader">
          {seen.map((topic) => (
            <div key={topic}>
              <Checkbox
                label={topics[topic]}
                checked={!ticks.hide.includes(topic)}
                onChange={(_, { checked }) =>
                  change({
                    ...ticks,
                    hide: toggled(ticks.hide, topic, checked !== true),
                  })
                }
              />
            </div>
          ))}
        </div>
      </Fold>
      <Fold title="Show more">
        <p className={pane.quiet}>
          Not meant for {audiences[audience].words}. Each is shown only if you
          tick it.
        </p>
        <div role="group" aria-label="Not meant for this reader">
          {others.map((topic) => (
            <div key={topic}>
              <Checkbox
                label={topics[topic]}
                checked={ticks.show.includes(topic)}
                onChange={(_, { checked }) =>
                  change({
                    ...ticks,
                    show: toggled(ticks.show, topic, checked === true),
                  })
                }
              />
            </div>
          ))}
        </div>
      </Fold>
    </>
  );
}
