### Readiness checks: one sentence a code, check-<code>. It names the item and says what to do.

## Anywhere


## Header

check-markets-none = গার্মেন্ট কোথায় বিক্রি হবে বলা নেই। বাজার বাছুন: লেবেল ও নিরাপত্তার যাচাই এর উপর নির্ভর করে।
check-wearer-missing = গার্মেন্ট কার জন্য বলা নেই। বাছুন: নিরাপত্তার যাচাই এর উপর নির্ভর করে।
check-languages-missing = লেবেলের ভাষা দেওয়া নেই। লিখুন: প্রতিটি বাজার নিজের ভাষা চায়।
check-exemption-void = “{ $code }” থেকে ছাড়ের কোনো প্রভাব নেই: কারণ ও নাম লাগবে, এবং শুধু ফিতার নিষেধই বাদ দেওয়া যায়। পূর্ণ করুন বা মুছুন।

## Sizes

check-size-age-missing = এটি শিশুর গার্মেন্ট, এবং এই সাইজগুলোতে বয়স বা উচ্চতা নেই: { $sizes }। একটি লিখুন: নিরাপত্তার যাচাই এর উপর নির্ভর করে।

## Drawings


## Points of measure


## Grade rules

check-grade-reverses = { $letter } { $name }: মাপ কিছু সাইজে বাড়ে, কিছুতে কমে; { $size } সাইজে ঘোরে। এটি কি ইচ্ছাকৃত?
check-tolerance-overlaps = { $letter } { $name }: এটি জরুরি পয়েন্ট, এবং { $from } সাইজের পিস { $to } হিসেবে পাস হতে পারে: সাইজের পার্থক্য { $step }, টলারেন্স −{ $minus } ও +{ $plus }। টলারেন্স কমান।
check-step-coarse = { $letter } { $name }: পূর্ণ করার ধাপ { $step } টলারেন্সের অর্ধেকের বেশি (−{ $minus }, +{ $plus })। ছোট ধাপ বা বড় টলারেন্স দিন।
check-steps-uneven = { $letter } { $name }: প্রতি সাইজে পার্থক্য { $exact }, কিন্তু পূর্ণ করায় { $size } সাইজ পর্যন্ত { $before } আর পরে { $after }। ছোট ধাপ বা অন্য গ্রেড দিন।
check-grade-half-or-full = { $letter } { $name }: প্রথম সাইজ থেকে শেষ পর্যন্ত পুরো ঘেরে বাড়ে { $growth }, এমন পয়েন্টে প্রায় { $usual }। ভুল করে অর্ধেক বা পুরো লেখা হয়েছে কি?
check-value-not-positive = { $letter } { $name }: { $size } সাইজে আসে { $value }। মাপ শূন্যের বেশি হতে হবে: মাপ বা গ্রেড ঠিক করুন।
check-lengths-partial = { $letter } { $name } কিছু দৈর্ঘ্যে বদলায়, আর { $length } নিয়ে কিছু বলা নেই। কত যোগ হয় লিখুন; 0 চলে।

## Relations between measurements

check-stretched-below-relaxed = { $item }: { $size } সাইজে না টেনে { $relaxed }, অথচ টেনে মাত্র { $stretched }। একটি ঠিক করুন।
check-neck-under-head = { $item }: { $size } সাইজে গলা চারপাশে { $opening } খোলে, মাথা { $girth }। মাথা দিয়ে নাও ঢুকতে পারে: দেখুন।
check-cuff-under-hand = { $item }: { $size } সাইজে কাফ চারপাশে { $opening } খোলে, হাত { $girth }। হাত নাও ঢুকতে পারে: দেখুন।
check-zip-not-opening = { $item }: { $size } সাইজে জিপ { $length } লম্বা, আর তার খোলা { $point } { $opening }। একটি ঠিক করুন।
check-cord-under-channel = { $item }: { $size } সাইজে ফিতা { $length } লম্বা, আর তার চ্যানেল { $point } চারপাশে { $channel }। ফিতা লম্বা করুন।
check-rise-and-inseam = { $item }: { $size } সাইজে রাইজ { $rise } ও ইনসিম { $inseam } মিলে আউটসিম { $outseam } হয় না। তিনটিই দেখুন।
check-points-usual = { $kind }: এই পয়েন্টগুলো সাধারণত থাকে, কোনো পয়েন্টকে এগুলো বলা হয়নি: { $missing }। যোগ করুন, অথবা আপনার পয়েন্টগুলো কী তা বলুন।
check-dimension-missing = { $item }: এর সাথে এগুলোও লাগে, কোনো পয়েন্টকে এগুলো বলা হয়নি: { $missing }। যোগ করুন।

## Parts and colourways

check-parts-none = কোনো পার্ট নেই। যেগুলোর নিজের রং হতে পারে লিখুন: মূল কাপড়, কাফ, সুতা।
check-colourways-none = কোনো কালারওয়ে নেই। অন্তত একটি লিখুন।

## Materials

check-claim-hundred = { $item }-এ 100 %, খাঁটি বা সম্পূর্ণ লেখা, অথচ { $material }-এ দ্বিতীয় আঁশ আছে। EU ও US এমন কথা শুধু একক আঁশের জন্য মানে। বদলান।
check-fibre-twice = { $item }: উপাদানে একটি আঁশ দুইবার আছে। দুটি যোগ করুন।
check-virgin-wool = { $item }: এই মিশ্রণে ভার্জিন উল আছে। EU এই নাম শুধু তখনই মানে যখন তা অন্তত 25 % এবং সাথে মাত্র একটি অন্য আঁশ (রেগুলেশন 1007/2011, ধারা 8)। যাচাই করুন।
check-mass-disagrees = { $item }: ঘোষিত { $declared } g/m², সুতা থেকে হিসাবে { $computed } g/m²। দুটিই দেখুন।
check-zip-size-missing = { $item }: জিপের দৈর্ঘ্য নেই। লিখুন, অথবা যে পয়েন্ট বন্ধ করে তা বাছুন।
check-minimum-unmet = { $item }: { $colourway }-এ লাগে { $needed }, ন্যূনতম অর্ডার { $minimum } (একক: { $unit })। সরবরাহকারীকে জিজ্ঞেস করুন, অথবা বেশি অর্ডার দিন।

## Construction

check-stitch-unknown = { $item }: { $stitch } ISO 4915-এর স্টিচ তালিকায় নেই। যাচাই করুন।
check-seam-code-unlike = { $item }: { $code } ISO 4916-এর চিহ্ন নয়, অথবা বাছাই করা শ্রেণির নয়। দুটিই দেখুন।

## Artwork

check-artwork-file-missing = { $item }: মূল ফাইল নেই। আপলোড করুন।
check-artwork-coarse = { $item }: আসল আকারে ছবিতে প্রতি ইঞ্চিতে { $dpi } বিন্দু; সাধারণত { $wanted } লাগে। আরও সূক্ষ্মটি আপলোড করুন।
check-artwork-live-text = { $item }: মূলটিতে লাইভ টেক্সট বা লিংক করা ছবি আছে, অন্য জায়গায় আলাদা দেখাতে পারে। লেখা আউটলাইনে বদলান ও ছবি ফাইলে রাখুন।
check-text-too-small = { $item }: সবচেয়ে ছোট অক্ষর { $height } উঁচু। { $method } সাধারণত { $least } থেকে ধরে। বড় করুন।

## Labels and care

check-care-customary = লেবেলে কেয়ার নির্দেশ নেই। EU ও UK চায় না, কিন্তু ক্রেতা আশা করে। কেয়ার ও তার লেবেল লিখুন।
check-care-harsh = { $treatments }: এই ম্যাটেরিয়াল যা সহ্য করে লেবেল তার বেশি অনুমতি দেয়: { $materials }। মৃদু কেয়ার বাছুন।
check-label-size-missing = { $item }: { $missing } নেই। লিখুন।
check-label-place-missing = { $item }: সিম থেকে কত দূরে বলা নেই। দূরত্ব লিখুন।
check-label-language-missing = { $item }-এ এই ভাষার লেখা নেই: { $language }। লিখুন।

## Packing

check-ratio-remainder = { $item }: এক প্যাকে { $pack } পিস, আর { $colourway }-এ { $pieces }, তাই { $left } থেকে যায়। একটি বদলান।

## Safety: these caution. The text of the rule, local law and a licensed laboratory decide.

check-cord-exempted = { $item }: শিশুর গার্মেন্টের হুড বা গলায় ফিতা, এবং একটি নিয়ম বাদ দেওয়া হয়েছে। { $reasons }। অনুমোদিত ল্যাবরেটরিকে বিচার করতে দিন।
check-cord-free-ends-eu = { $item }: বড় শিশুর গার্মেন্টের হুড বা গলায় ফিতা, সাইজ { $sizes }। { $rule } সেখানে খোলা প্রান্ত নিষেধ করে। সরান, অথবা বলুন নেই।
check-cord-free-missing = { $item }: শিশুর গার্মেন্টের এই ফিতার { $missing } নেই। লিখুন: নিয়ম এর উপর নির্ভর করে।
check-cord-long-us = { $item }: ফিতা { $free } বাইরে ঝোলে, সাইজ { $sizes }। { $rule } গার্মেন্ট পুরো চওড়ায় { $most } অনুমতি দেয়। ছোট করুন।
check-cord-toggled-us = { $item }: ফিতায় টগল, টিপ বা গিঁট আছে, সাইজ { $sizes }। { $rule } কোমর ও হেমে এগুলো মানে না। সরান।
check-cord-loose-us = { $item }: ফিতা টেনে বের করা যায়, সাইজ { $sizes }। { $rule } আটকানোর জন্য বারট্যাক চায়। যোগ করুন।
check-cord-long-eu = { $item }: ফিতা { $free } বাইরে ঝোলে, সাইজ { $sizes }। স্মৃতি থেকে, যাচাই ছাড়া, { $rule } সেখানে { $most } অনুমতি দেয়। মানদণ্ডে সংখ্যাটি পড়ুন, দরকার হলে ছোট করুন।
check-cord-back-eu = { $item }: শিশুর গার্মেন্টের পিঠে ফিতা, সাইজ { $sizes }। স্মৃতি থেকে, যাচাই ছাড়া, { $rule } সেখানে শুধু বাঁধা বেল্ট মানে। মানদণ্ডে পড়ুন।
check-evidence-small-parts = { $item } খুলে আসতে পারে, আর সাইজ { $sizes } 3 বছরের কম শিশুর জন্য। { $rule } ছোট অংশের পরীক্ষা চায়। রিপোর্ট লিখুন।
check-evidence-flammability = { $item }: কত দ্রুত পোড়ে তার পরীক্ষা নেই। { $rule } চাইতে পারে। রিপোর্ট লিখুন, অথবা কেন নেই বলুন।
check-evidence-sleepwear = { $item }: শিশুর রাতের পোশাক, সাইজ { $sizes }, পোড়ার পরীক্ষা নেই। { $rule } তা চায়। রিপোর্ট লিখুন।
check-evidence-nickel = { $item } ত্বকে লাগে এমন ধাতু, নিকেলের পরীক্ষা নেই। { $rule } এর সীমা দেয়। রিপোর্ট লিখুন।
check-evidence-azo-dyes = { $item } রং করা, অ্যাজো রঙের পরীক্ষা নেই। { $rule } এর সীমা দেয়। রিপোর্ট লিখুন।
check-evidence-lead = { $item }: শিশুর পণ্যের ট্রিম, সাইজ { $sizes }, সিসার পরীক্ষা নেই। { $rule } এর সীমা দেয়। রিপোর্ট লিখুন।
