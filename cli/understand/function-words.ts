/** Words that hold a sentence together and say little of what it is about. */

const words = `
a about after again all also am an and any anything are as at back be because been before being but by can could did do does doing done down each either else
ever every for from get gets getting give given go goes going got had has have having he her here hers him his how i if in into is it just keep kept know let
like little look made make many may me might mine more most much must my need needs never no nor not now of off often on once one only or other our out over own
please put quite rather really right said same say says see seem set shall she should since so some someone something soon still such sure take taken tell than that
the their them then there these they thing things think this those though through till to today together tomorrow tonight too under until up us very want wants was way
we well were what when where whether which while who whom whose why will with without would yesterday yet you your ok yes lot kind bit maybe actually always
between both during enough exactly few find first last least less long me moment new next nobody none nothing old onto ought ourselves past per possible
put show simply sort supposed sure time times try two three four five six seven eight nine ten upon use used using want week weeks day days night morning evening
fewer warmer colder cooler hotter higher lower later sooner longer shorter bigger smaller heavier lighter afternoon month year ago already around away come came good bad big better best worse okay thanks mean means work works
`;

/** In plain spelling, lower case. */
export const functionWords: ReadonlySet<string> = new Set(words.trim().split(/\s+/));
