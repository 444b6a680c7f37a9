/**
 * The words of the language. Only the vocabulary is generated from here: the scanner in
 * src/GroveSpec.Syntax/Parsing/Scanner.cs reads the text, because what a word is depends on what stands before it
 * (a unit follows a number), because names may hold any letter of any script, and because every character,
 * blank and comment must come back out of the tree.
 */
lexer grammar GroveWords;

// Words that begin a statement.
PLANTING  : 'planting';
HABIT     : 'habit';
SPECIES   : 'species';
CONTAINER : 'container';
SITE      : 'site';
VIEWED    : 'viewed';
CONCEPT   : 'concept';
USE       : 'use';
TRUNK     : 'trunk';
TAPE      : 'tape';
ROLE      : 'role';
TASK      : 'task';
SEEN      : 'seen';
MEASURED  : 'measured';
TOLERANCE : 'tolerance';
ACCEPT    : 'accept';
MUTE      : 'mute';
PROFILE   : 'profile';

// Words within a trunk, a role, a task, a tape or an accepted finding: none of them can be a name.
AT        : 'at';
DIAMETER  : 'diameter';
GIRTH     : 'girth';
HEIGHT    : 'height';
LEAN      : 'lean';
TOWARD    : 'toward';
LINE      : 'line';
CROWN     : 'crown';
RAISED    : 'raised';
PLANNED   : 'planned';
REMOVED   : 'removed';
FIXED     : 'fixed';
FORM      : 'form';
VIGOUR    : 'vigour';
AIM       : 'aim';
BY        : 'by';
KEEP      : 'keep';
UNDER     : 'under';
RANK      : 'rank';
STORY     : 'story';
ON        : 'on';
ALL       : 'all';
OF        : 'of';
IN        : 'in';
FROM      : 'from';
TO        : 'to';
AFTER     : 'after';
BEFORE    : 'before';
EVERY     : 'every';
UNTIL     : 'until';
WITH      : 'with';
COIL      : 'coil';
SPAN      : 'span';
BEND      : 'bend';
OVER      : 'over';
LOW       : 'low';
MIDDLE    : 'middle';
HIGH      : 'high';
FACING    : 'facing';
DONE      : 'done';
BETWEEN   : 'between';
BECAUSE   : 'because';
SOURCE    : 'source';

// Words of the head and of profiles: no name stands where they do, so they may be names elsewhere.
LATITUDE  : 'latitude';
ZONE      : 'zone';
LAST      : 'last';
FIRST     : 'first';
FROST     : 'frost';
MEANS     : 'means';
SUN       : 'sun';
EYE       : 'eye';
NEAR      : 'near';
FAR       : 'far';
DEEP      : 'deep';
BARK      : 'bark';
X         : 'x';
BOTANICAL : 'botanical';
COMMON    : 'common';
LEAVES    : 'leaves';
HARDINESS : 'hardiness';
GROWTH    : 'growth';
FLUSH     : 'flush';
BEND_LIMIT: 'bend-limit';
STAGE     : 'stage';
CAUTION   : 'caution';
MEMORY    : 'memory';
PRACTICE  : 'practice';

// Any other word. A word right behind a number, or behind a closing parenthesis, is a unit.
WORD      : WORD_START WORD_PART*;
UNIT      : WORD_START WORD_PART*;
NUMBER    : '-'? DIGIT+ ('.' DIGIT+)?;
DATE      : DIGIT DIGIT DIGIT DIGIT DIGIT* '-' DIGIT+ ('-' DIGIT+)?;
TEXT      : '"' ( '\\' . | ~["\\\r\n] )* '"';

PERCENT   : '%';
COMMA     : ',';
OPEN      : '{';
CLOSE     : '}';
LEFT      : '(';
RIGHT     : ')';

// The end of a line counts only within braces.
ROW_END   : '\r\n' | '\r' | '\n';
STRAY     : .;

fragment DIGIT      : [0-9];
fragment WORD_START : [A-Za-z_'] | ~[\u0000-\u007F];
fragment WORD_PART  : WORD_START | [0-9-];
