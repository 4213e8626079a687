/** Everyday English words that are never taken for slips of others (`house` for `horse`, `there` for `three`). */

const words = `
about above across gusted gusting gusts actually adult advice after again against agree ahead alarm alone along already alright also although always among amount angry
animal another answer anybody anyone anything anyway apart apple april around arrive asked asleep august aunt avoid awake aware awful badly barely
basic basket beach beans bears beast beats because become before began begin behind being belly below bench beside better between beyond bills birth
bitter black blade blame blank blind block blood board boats boots borrow bottle bottom bought bound boxes brain brand brave bread break breath brick
bride brief bring broad broke brook brother brown brush build built bunch burnt buyer cable cakes called calls camera camping candy cards career careful
carry catch cause chain chair chance change chase cheap cheat check cheek cheese chest chief child choice choose church circle claim class clean clear
clever climb clock close cloth clothes cloud coach coast coats coffee color colour comes coming common could count couple course court cousin cover
crazy cream create cross crowd crown crying cycle daily dairy dance dated dates daughter deals dealt death decide degree dinner direct dirty doctor doing
dollar doors doubt down dozen drain drama dream dress drift drill drive drove dying eager early earth easier easily eight either elbow email empty enemy
engine enjoy enough enter equal error evening event every everybody everyone everything exact except excuse extra faced faces facts fails faint fairly faith
false family fancy fault favor favour fellow fence fever field fifth fifty fight figure final finally finger finish first fixed flash flies floor flour
flower fluid folks force forest forget forgot forty found frame fresh fridge friend front frost fruit fully funny garage garden gather giant given giving
glass glove going goods grand grant grape great green greet grew grind gross guard guess guest guide habit hands handy happen happy hardly hated
having heads heard heart heavy hello helped helps hence hidden highly hired hobby holds holes holiday honest honey hoped horse hotel hours house human
humor hungry hurry husband ideas image impossible inner inside instead issue itself jeans joint joked judge juice keeps kept kinda kitchen knees knife
knock known knows labor labour lamps large later laugh layer leads learn least leave ledge legal lemon level light liked likes limit lined lines lists
little lived liver lives local lodge logic lonely looks loose lorry loves lower lucky lunch lying magic major maker makes manage march marry match maybe
mayor means meant meats medal media mental metal middle might miles milk minor minus minute mixed model moment money month moral morning mother motor
mount mouse mouth mouths moved movie much music myself nails named nasty natural nearly needed needle nerve never newly nicer night ninth nobody noise none
north notice novel number nurse occur ocean offer often older onion opens order other otherwise ought ourselves outer owned owner packs page paint paper parents
parts party pasta paste patch peace penny people perhaps phone photo piano piece pilot pitch place plain plane plant plate played please plenty point
poles porch potato pound power press pretty price pride prime print prize probably problem proof proper proud prove purse queen quick quiet quite radio rains
raise range rapid rather reach react ready really reason relax reply right river roads roast robot rough round route royal rules running salad sales
salt sauce saved scale scared scene school scope score screw second seems selling sense serve seven several shade shake shall shape share sharp sheep sheet
shelf shell shift shine shirt shock shoes shoot shops short should shout shown sides sight silly simple since sister sixth sixty skill skirt sleep slice slide
slope small smart smell smile smoke snake solid solve somebody someone something sorry sorts sound south space spare speak speed spell spend spent spice spoke
spoon sport spots spray spring stack staff stage stain stair stamp stand stars start state stays steak steal steam steel steep stick still stock stomach stone
stood stool store storm story stove strange street strike strong stuck study stuff style sugar suits summer super sure sweet swept swing table taken takes
talks tasks taste taxes teach teeth tells tenth terms thank thanks their theirs them themselves then there these thick thief thing things think third thirty
those though thought thousand three threw throat throw thumb tight tired title toast today together tomorrow tonight tools tooth total touch tough tower
tower towns track trade train trash treat tree trees trial trick tried tries trips truck truly trust truth trying turkey turns twelve twenty twice twist
under uncle under until upper upset usual value verse very visit voice wagon waist waits walks walls wants waste watch water weeks weird whale wheat wheel
where whether which while white whole whose wider window wings winter wiped wires wiser woman women wonder woods words works world worry worse worst worth
would wound wrist write wrong yards yeah years yelled young yours yourself youth
`;

/** Lower case, five letters or more being the ones that matter. */
export const everydayWords: ReadonlySet<string> = new Set(words.trim().split(/\s+/));
