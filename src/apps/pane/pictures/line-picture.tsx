import { type ReactNode, useId } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import { usePaneStyles } from "../styles";
import { FiguresTable } from "./figures-table";
import { dashes, pictureColors } from "./picture-colors";
import { placed, ticks } from "./scale";

export interface PictureLine {
  readonly name: string;
  readonly points: readonly { readonly x: number; readonly y: number }[];
}

export interface LinePictureProps {
  readonly title: string;
  /** What the picture shows, in a sentence that names its main figures. */
  readonly says: string;
  readonly across: string;
  readonly up: string;
  readonly lines: readonly PictureLine[];
  /** A level drawn across, such as a goal. */
  readonly level?: { readonly name: string; readonly y: number };
  /** A place marked on the axis across, such as today's price. */
  readonly mark?: { readonly name: string; readonly x: number };
  readonly showX: (value: number) => string;
  readonly showY: (value: number) => string;
  readonly dark: boolean;
}

const WIDTH = 320;
const HEIGHT = 190;
const LEFT = 46;
const RIGHT = 310;
const TOP = 12;
const BOTTOM = 158;

/** Lines over an axis, with the same in a sentence and in figures. Draws nothing without two points. */
export function LinePicture(props: LinePictureProps): ReactNode {
  const { title, says, lines, level, mark, showX, showY, dark } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const id = useId();
  const points = lines.flatMap((line) => line.points);
  const xs = points.map(({ x }) => x);
  const ys = [...points.map(({ y }) => y), ...(level ? [level.y] : [])];
  if (new Set(xs).size < 2) return null;
  const up = ticks(Math.min(...ys), Math.max(...ys));
  const across: readonly [number, number] = [Math.min(...xs), Math.max(...xs)];
  const range: readonly [number, number] = [up[0] ?? 0, up[up.length - 1] ?? 1];
  const atX = (x: number): number => placed(x, across, [LEFT, RIGHT]);
  const atY = (y: number): number => placed(y, range, [BOTTOM, TOP]);
  const colors = pictureColors(dark);
  return (
    <figure className={styles.figure}>
      <svg
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-labelledby={`${id}-title ${id}-says`}
        className={styles.svg}
      >
        <title id={`${id}-title`}>{title}</title>
        <desc id={`${id}-says`}>{says}</desc>
        {up.map((y) => (
          <g key={y}>
            <line
              x1={LEFT}
              x2={RIGHT}
              y1={atY(y)}
              y2={atY(y)}
              className={styles.grid}
            />
            <text
              x={LEFT - 6}
              y={atY(y) + 3.5}
              textAnchor="end"
              className={styles.text}
            >
              {showY(y)}
            </text>
          </g>
        ))}
        {ticks(...across, 4)
          .filter((x) => x >= across[0] && x <= across[1])
          .map((x) => (
            <text
              key={x}
              x={atX(x)}
              y={BOTTOM + 14}
              textAnchor={atX(x) > RIGHT - 16 ? "end" : "middle"}
              className={styles.text}
            >
              {showX(x)}
            </text>
          ))}
        <text
          x={(LEFT + RIGHT) / 2}
          y={HEIGHT - 3}
          textAnchor="middle"
          className={styles.text}
        >
          {props.across}
        </text>
        {level && (
          <line
            x1={LEFT}
            x2={RIGHT}
            y1={atY(level.y)}
            y2={atY(level.y)}
            className={styles.level}
          />
        )}
        {mark && mark.x >= across[0] && mark.x <= across[1] && (
          <line
            x1={atX(mark.x)}
            x2={atX(mark.x)}
            y1={TOP}
            y2={BOTTOM}
            className={styles.level}
          />
        )}
        {lines.map((line, i) => (
          <polyline
            key={line.name}
            points={line.points
              .map(({ x, y }) => `${atX(x).toFixed(1)},${atY(y).toFixed(1)}`)
              .join(" ")}
            fill="none"
            stroke={colors[i % colors.length]}
            strokeWidth={2.5}
            strokeDasharray={dashes[i % dashes.length]}
            strokeLinejoin="round"
          />
        ))}
      </svg>
      <figcaption className={pane.quiet}>
        {lines.length > 1 && (
          <span className={styles.key} aria-hidden="true">
            {lines.map((line, i) => (
              <span key={line.name} className={styles.keyItem}>
                <svg width="22" height="8">
                  <line
                    x1="0"
                    x2="22"
                    y1="4"
                    y2="4"
                    stroke={colors[i % colors.length]}
                    strokeWidth={2.5}
                    strokeDasharray={dashes[i % dashes.length]}
                  />
                </svg>
                {line.name}
              </span>
            ))}
          </span>
        )}
        {says}
      </figcaption>
      <FiguresTable
        caption={title}
        columns={[props.across, ...lines.map(({ name }) => name)]}
        rows={[...new Set(xs)]
          .sort((a, b) => a - b)
          .map((x) => [
            showX(x),
            ...lines.map((line) => {
              const point = line.points.find((p) => p.x === x);
              return point ? showY(point.y) : "–";
            }),
          ])}
      />
    </figure>
  );
}

const useStyles = makeStyles({
  figure: {
    margin: 0,
    display: "flex",
    flexDirection: "column",
    gap: "4px",
  },
  svg: { width: "100%", height: "auto", maxWidth: "520px", display: "block" },
  grid: { stroke: tokens.colorNeutralStroke2, strokeWidth: 1 },
  level: {
    stroke: tokens.colorNeutralForeground3,
    strokeWidth: 1.2,
    strokeDasharray: "3 3",
  },
  text: {
    fill: tokens.colorNeutralForeground3,
    fontSize: "10.5px",
    fontFamily: tokens.fontFamilyBase,
  },
  key: {
    display: "flex",
    flexWrap: "wrap",
    gap: "2px 14px",
    marginBottom: "4px",
  },
  keyItem: { display: "inline-flex", alignItems: "center", gap: "6px" },
});
