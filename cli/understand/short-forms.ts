/** Which short, texted and run-together forms stand for which plain words. English only; the trade's words are in rules/words.yaml. */

const forms = `
u=you|ur=your|r=are|n=and|w=with|k=ok|em=them|im=i am|its=it is|ive=i have|weve=we have|theyve=they have|youve=you have
dont=do not|doesnt=does not|didnt=did not|cant=can not|cannot=can not|wont=will not|isnt=is not|arent=are not|wasnt=was not|werent=were not
havent=have not|hasnt=has not|shouldnt=should not|wouldnt=would not|couldnt=could not|aint=is not|whats=what is|wheres=where is|hows=how is
whens=when is|whos=who is|thats=that is|theres=there is|heres=here is|theyre=they are|youre=you are|theyll=they will|itll=it will|lets=let us
gonna=going to|gotta=got to|wanna=want to|hafta=have to|oughta=ought to|shoulda=should have|outta=out of|kinda=kind of|sorta=sort of
sposed=supposed|lotta=lot of|dunno=do not know|lemme=let me|gimme=give me|whatcha=what are you|cmon=come on|yall=you all
tmrw=tomorrow|tmr=tomorrow|tmw=tomorrow|tomoz=tomorrow|tomoro=tomorrow|2morrow=tomorrow|2moro=tomorrow|2mrw=tomorrow|2day=today|2nite=tonight|2night=tonight
tonite=tonight|nite=night|nites=nights|yday=yesterday|yest=yesterday|b4=before|thru=through|tho=though|abt=about|bc=because|cuz=because|cos=because|coz=because
plz=please|pls=please|wut=what|wat=what|ppl=people|smth=something|sth=something|sumthin=something|somethin=something|rn=right now|asap=soon|temp=temperature
temps=temperatures|nvm=never mind|nevermind=never mind|ok=ok|okay=ok|yr=year|yrs=years|mins=minutes|max=maximum|min=minimum|avg=average|approx=about
ya=you|yer=your|wi=with|nd=and|dat=that|dis=this|da=the|dem=them|dey=they|goin=going|doin=doing|eatin=eating|lookin=looking|gettin=getting|til=till|info=information
headin=heading|runnin=running|wanting=want|everybodys=everybody is|everyones=everyone is|howd=how did|whered=where did|whyd=why did|whatd=what did|whatre=what are|howre=how are
`;

/** Short form → the words it stands for. */
export const shortForms: ReadonlyMap<string, readonly string[]> = new Map(
  forms
    .trim()
    .split(/[|\n]/)
    .map((pair) => {
      const [short = '', long = ''] = pair.split('=');
      return [short, long.split(' ')] as const;
    }),
);

/** What an ending after an apostrophe stands for; an `s` after a name is dropped (`the pen's moved`). */
export const endings: ReadonlyMap<string, string> = new Map([
  ['re', 'are'],
  ['ve', 'have'],
  ['ll', 'will'],
  ['m', 'am'],
  ['d', 'would'],
]);

/** Words after which `'s` means `is`. */
export const beforeIs: ReadonlySet<string> = new Set(
  'what where how when who why that there here it he she everything everyone everybody something'.split(' '),
);
