/*
 * author: Hob Larkin, Tidewell
 * licence: CC0-1.0
 * tags: carton, wrap, gusset, fin, favour, beginner
 * notes: A gabled carton for roasted chestnuts that have cooled. Two walls lean in to a ridge, the two between
 *   them are pinched, and a fin stands on the ridge. Glue the fin last, when the carton is filled. Card is not
 *   made for food; line it.
 * setting: Small = side 2 in, tall 2 1/2 in, gable 1 1/2 in
 * setting: Tall = side 2 1/4 in, tall 4 in, gable 1 3/4 in
 */
design("Chandler's carton", { units: "in" });

const side = dial("side", "2 1/2 in", { from: "2 in", to: "2 1/2 in" });
const tall = dial("tall", "3 in", { from: "2 in", to: "4 in" });
const gable = dial("gable", "1 3/4 in", { from: "1 1/2 in", to: "2 in" });
must(gable > side / 2, "Make the gable longer, or the side narrower: the leaning walls have to meet over the middle.");

const tub = wrap({ columns: 4, width: side, rows: [tall, gable, 0.5], names: ["wall", "gable", "fin"], seam: 0.5 });
tub.columns("even").rows("gable").gusset();
tub.columns("even").rows("fin").remove();
tub.columns(1).rows("fin").lap(tub.columns(3).rows("fin"));
tub.floor({ tab: 0.5 });

sheet("A3", { weight: 240 });
