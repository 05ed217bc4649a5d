// dependency-cruiser is an ES module, which jest on Node 20 cannot load: the test starts this file and reads its answer.
import { cruise } from "dependency-cruiser";
import architecture from "./cruise-rules.cjs";

const [baseDir = process.cwd()] = process.argv.slice(2);
const { output } = await cruise(["src"], { ...architecture.options, baseDir });
const { forbidden } = output.summary.ruleSetUsed;
const violations = output.summary.violations.map(
  ({ rule, from, to, cycle }) => ({
    rule: rule.name,
    from,
    to: cycle ? cycle.map((step) => step.name).join(" → ") : to,
    means: forbidden.find(({ name }) => name === rule.name).comment,
  }),
);
process.stdout.write(
  JSON.stringify({ modules: output.summary.totalCruised, violations }),
);
