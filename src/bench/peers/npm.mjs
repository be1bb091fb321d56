// The same comparisons by a JSON rule engine of npm. Arguments: the data, the file for the verdicts.
import { readFileSync, writeFileSync } from 'node:fs';
import { Engine } from 'json-rules-engine';

const data = JSON.parse(readFileSync(process.argv[2], 'utf8'));

// Arithmetic is not its own, so the distance to each bound comes as a fact worked out on demand.
const distance = (params, almanac) =>
  Promise.all([almanac.factValue('demand'), almanac.factValue('limit')]).then(([demand, limit]) => {
    const mark = limit * params.factor;
    const room = 1e-9 * Math.max(Math.abs(demand), Math.abs(mark));
    return (params.over ? demand - mark : mark - demand) - room;
  });

const engine = new Engine();
engine.addFact('distance', distance);
for (const rule of data.rules) {
  rule.bounds.forEach((bound, index) =>
    engine.addRule({
      conditions: {
        all: [
          { fact: 'rule', operator: 'equal', value: rule.name },
          { fact: 'distance', params: bound, operator: 'greaterThan', value: 0 },
        ],
      },
      event: { type: bound.outcome, params: { index } },
    }),
  );
}

async function judge(asked) {
  const { events } = await engine.run(asked);
  const worst = events.sort((a, b) => a.params.index - b.params.index)[0];
  return worst ? worst.type : 'FINE';
}

const lines = [];
for (let plan = 0; plan < data.plans.length; plan++) {
  for (const asked of data.plans[plan]) {
    lines.push(`${plan} ${asked.rule} ${asked.at} ${await judge(asked)}`);
  }
}
writeFileSync(process.argv[3], lines.sort().join('\n') + '\n');

for (let round = 0; round < 9; round++) {
  const began = process.cpuUsage();
  let passes = 0;
  const end = Date.now() + 500;
  while (Date.now() < end) {
    for (const plan of data.plans) {
      for (const asked of plan) {
        await judge(asked);
      }
    }
    passes++;
  }
  const used = process.cpuUsage(began);
  if (round >= 2) {
    console.log(`npm\t${(used.user + used.system) / passes / data.plans.length}`);
  }
}
