/**
 * One statement of a .grove file. The text is cut into statements before it comes here: a statement ends at the end of
 * its line, or of the line on which its block is closed, so that one bad line costs one statement.
 * Rules are small and named for what a grower writes, because a message about a mistake is made from the rule in which
 * it was met.
 */
parser grammar Grove;

options { tokenVocab = GroveWords; contextSuperClass = GrammarContext; }

statement
    : ( planting | habit | species | container | site | viewed | concept | use
      | trunk | tape | role | task | seen | measured
      | tolerance | accept | mute | profile ) EOF
    ;

// The head

planting  : PLANTING text ;
habit     : HABIT habitWord ;
species   : SPECIES speciesName ;
concept   : CONCEPT text ;
use       : USE text ;

container : CONTAINER containerShape ( dimensions | outline ) ;
dimensions: distance ( X distance )* ;
outline   : corner+ unit? COMMA? distance DEEP ;
corner    : LEFT coordinate COMMA coordinate RIGHT ;

site      : SITE ( COMMA? siteClause )* ;
siteClause
    : latitude | zone | frost | means | sun
    ;
latitude  : LATITUDE degrees hemisphere? ;
zone      : ZONE zoneNumber ;
frost     : ( LAST | FIRST ) FROST dayOfYear ;
dayOfYear : NUMBER month ;
month     : UNIT ;
means     : MEANS temperature ( COMMA? temperature )* ;
sun       : SUN FROM bearing ;

viewed    : VIEWED ( COMMA? viewedClause )* ;
viewedClause
    : viewedFrom | viewedAt | eye | depth
    ;
viewedFrom: FROM bearing ;
viewedAt  : AT distance ;
eye       : EYE distance ;
depth     : NEAR | FAR ;

// Trunks

trunk     : TRUNK trunkName ( COMMA? trunkClause )* ;
trunkClause
    : at | thickness | height | lean | line | crown | ofRole | ofSpecies | raised | planned | removed | fixed
    ;
at        : AT place ;
place     : coordinate COMMA coordinate ;
thickness : ( DIAMETER | GIRTH ) distance ;
height    : HEIGHT distance ;
lean      : LEAN angle TOWARD bearing ;
line      : LINE spacePoint+ unit? ;
spacePoint: LEFT coordinate COMMA coordinate COMMA coordinate RIGHT ;
crown     : CROWN distance ;
ofRole    : ROLE roleName ;
ofSpecies : SPECIES speciesName ;
raised    : RAISED year ;
planned   : PLANNED moment ;
removed   : REMOVED moment ;
fixed     : FIXED ;

tape      : TAPE trunkName TO trunkName distance ( BETWEEN BARK )? ;

// Roles

role      : ROLE roleName OPEN ( ROW_END | COMMA | roleClause )* CLOSE ;
roleClause
    : form | vigour | aim | keep | rank | story
    ;
form      : FORM formWord ;
vigour    : VIGOUR vigourWord ;
aim       : AIM dimension distance BY year ;
keep      : KEEP dimension UNDER distance ;
dimension : DIAMETER | HEIGHT ;
rank      : RANK wholeNumber ;
story     : STORY text ;

// Tasks

task      : TASK taskName taskKind ( COMMA? taskClause )* ;
taskClause
    : on | ofTask | during | fromTo | after | before | offset | every | until
    | withWire | coil | stretch | bend | position | facing | done | note
    ;
on        : ON ( ALL | ROLE roleName | trunkName ( COMMA? trunkName )* | day ) ;
ofTask    : OF taskName ;
during    : IN moment ;
fromTo    : FROM moment ( TO moment )? ;
after     : AFTER moment ;
before    : BEFORE moment ;
offset    : timeSpan ( TO timeSpan )? ( AFTER | BEFORE ) taskName ;
every     : EVERY timeSpan ;
until     : UNTIL moment ;
withWire  : WITH ( wholeNumber X )? metal distance ;
coil      : COIL angle ;
stretch   : SPAN distance TO distance ;
bend      : BEND angle TOWARD bearing ( OVER distance )? ;
position  : LOW | MIDDLE | HIGH ;
facing    : FACING ( side | bearing ) ;
done      : DONE day ;
note      : text ;

seen      : SEEN stage day ;

// Readings

measured  : MEASURED day OPEN ( ROW_END | reading )* CLOSE ;
reading   : trunkName ( COMMA? readingClause )+ ;
readingClause
    : thickness | height | crown
    ;

// Judgement

tolerance : TOLERANCE checkName amount ;
accept    : ACCEPT checkName ( COMMA? trunkName )* BECAUSE text ;
mute      : MUTE checkName BECAUSE text ;

// Species profiles

profile   : PROFILE speciesName OPEN ( ROW_END | COMMA | entry )* CLOSE ;
entry     : entryValue ( COMMA? entrySource )? ;
entryValue
    : BOTANICAL text
    | COMMON text
    | LEAVES leafHabit
    | HARDINESS zoneNumber TO zoneNumber
    | GROWTH pace
    | FLUSH flushWord
    | BEND_LIMIT share
    | STAGE stage stageEdge TO stageEdge
    | CAUTION text
    ;
stageEdge : timeSpan ( BEFORE | AFTER ) anchor ;
anchor    : ( LAST | FIRST ) FROST | WORD ;
entrySource
    : SOURCE text
    | FROM MEMORY
    | COMMON PRACTICE
    ;

// Times

moment    : DATE | NUMBER | word word? NUMBER? ;
day       : DATE | NUMBER ;
stage     : word ;
year      : NUMBER ;

// Quantities

distance    : NUMBER unit? ;
coordinate  : NUMBER unit? ;
angle       : NUMBER unit? ;
bearing     : NUMBER unit? ;
degrees     : NUMBER unit? ;
temperature : NUMBER unit? ;
timeSpan    : NUMBER unit? ;
amount      : NUMBER unit? ;
share       : NUMBER unit? ;
wholeNumber : NUMBER ;
zoneNumber  : NUMBER UNIT? ;
unit        : UNIT | PERCENT ;

// Words

text          : TEXT ;
trunkName     : word ;
roleName      : word ;
taskName      : word ;
speciesName   : word ;
checkName     : word ;
habitWord     : word ;
containerShape: word ;
hemisphere    : WORD ;
formWord      : word ;
vigourWord    : word ;
taskKind      : word text? ;
metal         : word ;
side          : word ;
leafHabit     : word ;
pace          : word ;
flushWord     : word ;

// Words of the head and of profiles are names where no such word can stand.
word
    : WORD
    | LATITUDE | ZONE | LAST | FIRST | FROST | MEANS | SUN | EYE | NEAR | FAR | DEEP | BARK | X
    | BOTANICAL | LEAVES | HARDINESS | GROWTH | FLUSH | BEND_LIMIT | STAGE | CAUTION | MEMORY | PRACTICE
    ;
