### What a revision says, section by section.

## The program's words beside the brand's

term-legend = ≈ হলো আপনার ভাষায় প্রোগ্রামের শব্দ, মাতৃভাষীর যাচাই হয়নি। ব্র্যান্ড যা লিখেছে তাই চূড়ান্ত। = এর পরে ব্র্যান্ডের নিজের অনুবাদ।
later-title = এই সংস্করণ প্রকাশের পরে নতুন করে অনুবাদ হয়েছে। মূল লেখা একই আছে।

## Drawings

drawing-larger = বড় করে: { $drawing }
legend-point = মাপের পয়েন্ট
legend-part = পার্ট
legend-callout = কীভাবে সেলাই হবে
legend-artwork = আর্টওয়ার্ক
legend-label = লেবেল
legend-larger = ওই নম্বরের ড্রয়িংয়ে বড় করে
legend-dimension = পয়েন্টটি যা মাপে

## A rule that an owner sets aside

exemption-title = এখানে একটি নিয়ম প্রযোজ্য নয়: { $code }
exemption-reason = কারণ: { $reason }
exemption-by = বলেছেন: { $name }

## Sizes

lengths-caption = দৈর্ঘ্য, { $unit }
sizes-ages = বয়স
sizes-years = { $from } থেকে { $to } বছর
sizes-months = { $from } থেকে { $to } মাস
sizes-range = { $from } থেকে { $to } { $unit }
sizes-single = { $value } { $unit }

## Colourways

parts-planned = { $count }টি পিস পরিকল্পিত
parts-as-dyed = রং করার পরে

## Materials

materials-material = ম্যাটেরিয়াল
materials-what = এটি কী
materials-where = কোথায় লাগে
materials-length = দৈর্ঘ্য ও ব্যবহার
materials-supply = সরবরাহ
materials-care = সর্বোচ্চ সহ্য করে
materials-parts = যে পার্টের রং

## Construction

construction-callout = কী সেলাই হবে
construction-larger = বড় করে
construction-stitch = স্টিচ ও সিম
construction-measures = দূরত্ব
construction-with = সুতা, টেপ, বারট্যাক
construction-per-inch = প্রতি ইঞ্চিতে { $count }
construction-lines = সিম, কিনারা ও রেখা

## Artwork

artwork-sizes = { $from } থেকে { $to }
artwork-all-sizes = সব সাইজ
artwork-true-size = { $width } × { $height } mm
artwork-placed = যেখানে বসবে
artwork-original = মূল ফাইল
artwork-no-picture = এই ফাইলের ছবি নেই। মূলটি ডাউনলোড করুন।

## Labels

labels-care = কেয়ার, লেবেলের ক্রমে
labels-signs = ছোট চিহ্নগুলো শুধু পর্দায় সাহায্যের জন্য। এগুলো লেবেলের কেয়ার চিহ্ন নয়।

## Packing

packing-steps = ধাপ
packing-packs = রেশিও প্যাক: প্রতি সাইজের পিস
packing-pack = প্যাক
packing-every-colourway = সব কালারওয়ে
packing-total = মোট

## An item without a name

sheet-item = নাম নেই

## To be dyed

dyeing-title = পরিকল্পিত পিসের জন্য রং করতে হবে
dyeing-substrate = যার উপর
dyeing-colour = রং
dyeing-kilograms = kg
dyeing-of = যার জন্য
dyeing-undyed = রং করা হবে না
dyeing-not-whole = এই কেজিতে ধরা নেই:
dyeing-lacks-pieces = কত পিস পরিকল্পিত বলা নেই
dyeing-lacks-parts = কোন পার্ট বানায় বলা নেই
dyeing-lacks-colour = রং বলা নেই
dyeing-parts-differ = এর পার্টগুলোর রং আলাদা
dyeing-lacks-consumption = একটি গার্মেন্টে কত লাগে বলা নেই
dyeing-lacks-unit = পিসে গোনা, ওজন বলা নেই
dyeing-lacks-mass = প্রতি বর্গমিটারে ওজন বলা নেই
dyeing-lacks-width = পুরো প্রস্থ বলা নেই
dyeing-lacks-wastage = অপচয় বলা নেই
dyeing-too-large = সংখ্যা বেশি বড়

## What composition labels say

composition-title = উপাদান, লেবেলের জন্য
composition-draft = প্রোগ্রামের খসড়া। লেবেলের দায়িত্বে যিনি, তিনি যাচাই করবেন।
materials-mass = { $mass } ({ $ounces } oz/yd²)
drawing-see = → { $number }
drawing-number = { $number } ·
