### সিল করা স্যাম্পলের সাথে বাল্ক পরিদর্শন।

inspection-title = বাল্ক পরিদর্শন { $number }
inspection-list = বাল্ক পরিদর্শন
inspection-head = পরিদর্শন
inspection-none = এর সাথে এখনও কোনো বাল্ক পরিদর্শন হয়নি।
inspection-do = বাল্ক পরিদর্শন করুন
inspection-what = তৈরি লটের কিছু পিস সিল করা স্যাম্পল ও তার রিভিশনের সাথে মিলিয়ে দেখা হয়।
inspection-no-safety = এই পরিদর্শনে পাস করা নিরাপত্তা নিয়ে কিছু বলে না। তা ঠিক করে লাইসেন্সপ্রাপ্ত পরীক্ষাগার ও স্থানীয় আইন।
inspection-follows = যে পরিদর্শনের পর মেরামত
inspection-followed = আবার পরিদর্শন
inspection-earlier = এই সিলের সাথে পরিদর্শন: { $count }
inspection-blocked = যা বাল্ক পরিদর্শনে বাধা দেয়: { $count }
inspection-open-other = সেই পরিদর্শন খুলুন

## লট ও তার পরিকল্পনা

inspection-lot = লট
inspection-lot-help = লটে প্রতি কালারওয়ে ও সাইজে কত তৈরি পিস আছে। না থাকলে ঘর খালি রাখুন।
inspection-count-wrong = 0 থেকে { $most } পর্যন্ত পূর্ণ সংখ্যা লিখুন।
inspection-plan = নমুনা পরিকল্পনা
inspection-plan-of = { $lot } পিসের মধ্যে { $sample } পিস পরিদর্শন হবে
inspection-plan-moved = পরিকল্পনা দেখানোর পর লট বদলেছে। এখনকার পরিকল্পনা এটি।
inspection-show-plan = পরিকল্পনা দেখুন
inspection-begin = এই পরিদর্শন শুরু করুন
inspection-level = পরিদর্শন স্তর
inspection-aql = AQL
inspection-aql-of = AQL, { $class } ত্রুটি
inspection-usual = স্তর II, সাথে 2.5 ও 4.0 প্রচলিত রীতি, কোনো উৎস নেই।
inspection-critical-rule = ক্রিটিক্যাল ত্রুটির কোনো গ্রহণযোগ্য মাত্রা নেই: একটিই লট বাতিল করে।
inspection-critical-found = ক্রিটিক্যাল ত্রুটিযুক্ত পিস:
inspection-class = ত্রুটি
inspection-code = কোড অক্ষর
inspection-sample = নমুনা
inspection-accept = গ্রহণ
inspection-reject = প্রত্যাখ্যান
inspection-done = দেখা হয়েছে
inspection-found = ত্রুটিযুক্ত
inspection-of = { $sample }-এর মধ্যে { $done }
inspection-every-piece = লটের প্রতিটি পিস
inspection-arrow = টেবিলের তীর অন্য অক্ষরে নিলে সেই অক্ষরের নমুনা ধরা হয়।
inspection-source = একক নমুনা, সাধারণ পরিদর্শন, MIL-STD-105E-এর টেবিল অনুযায়ী।
inspection-colourway = কালারওয়ে
inspection-size = সাইজ
inspection-in-lot = লটে
inspection-draw = তুলুন
inspection-to-draw = কী তুলতে হবে
inspection-draw-how = লটের অনুপাতে তোলা হয়, নমুনায় কুলালে প্রতিটির অন্তত একটি: প্রচলিত রীতি, কোনো উৎস নেই। এলোমেলোভাবে তুলুন।

## যা পাওয়া গেছে

inspection-begun = যিনি শুরু করেছেন
inspection-within = প্রতিটি পরিকল্পনা তোলার ক্রমে শুধু নিজের প্রথম পিসগুলি গোনে। পিস গোনা হয় তার সবচেয়ে খারাপ ত্রুটির শ্রেণিতে।
inspection-points-rule = টলারেন্সের বাইরে জরুরি পয়েন্ট মেজর ত্রুটি, অন্য পয়েন্ট মাইনর: প্রচলিত রীতি, কোনো উৎস নেই।
inspection-pieces = পিস
inspection-nothing-yet = এখনও কোনো পিস দেখা হয়নি।
inspection-correct = সংশোধন
inspection-sound = ত্রুটি নেই: { $count }
inspection-corrected = সংশোধিত লেখা: { $count }
inspection-measured = মাপ: { $count }
inspection-no-defect = ত্রুটি নেই
inspection-enter-beyond = নমুনার বাইরে ক্রিটিক্যাল ত্রুটি
inspection-conceded = সিল করা স্যাম্পলে এগুলি ছাড় পেয়েছে। এখানে তবু ত্রুটি গোনা হয়: সিদ্ধান্ত ব্র্যান্ডের।
inspection-curve = পরিকল্পনা কতটা বলতে পারে
inspection-curve-what = লটের কত অংশ ত্রুটিযুক্ত হলে লট গ্রহণ হওয়ার সম্ভাবনা কত। AQL-এর চেয়ে খারাপ লটও গ্রহণ হতে পারে, ভালো লটও প্রত্যাখ্যান হতে পারে।
inspection-curve-share = ত্রুটিযুক্ত অংশ
inspection-curve-likelihood = গ্রহণের সম্ভাবনা
inspection-curve-at = { $share } ত্রুটিযুক্ত হলে গ্রহণের সম্ভাবনা { $likelihood }

## এরপর কী

inspection-enter = একটি পিস দেখুন
inspection-conclude = শেষ করুন
inspection-conclude-what = লেখা থেকে প্রোগ্রাম বলে লট গ্রহণ না প্রত্যাখ্যান।
inspection-conclude-final = এরপর কোনো পিস লেখা বা সংশোধন করা যায় না।
inspection-concluded = ফল
inspection-decide = লট নিয়ে সিদ্ধান্ত নিন
inspection-decide-final = সিদ্ধান্ত পরে বদলানো হয় না।
inspection-reason-help = ছাড়পত্র ছাড়া সবকিছুতে কারণ লাগবে। ছাড় দিলে কোন ত্রুটি ছাড়া হলো লিখুন।
inspection-released-help = লট পাঠানো যাবে।
inspection-concession-help = প্রত্যাখ্যাত হলেও লট পাঠানো হবে। ত্রুটিগুলি লিখুন।
inspection-rework-help = ফ্যাক্টরি লট বাছাই ও মেরামত করে। তারপর আবার পরিদর্শন হয়।
inspection-refused-help = লট নেওয়া হবে না।
inspection-fails-critical = ক্রিটিক্যাল ত্রুটিযুক্ত পিস: { $count }। একটিই যথেষ্ট।
inspection-fails = { $class } হিসেবে গোনা পিস: { $found }। সর্বোচ্চ { $accept } গ্রহণযোগ্য।
inspection-next-fails = যা পাওয়া গেছে তাতে লট প্রত্যাখ্যান হয়। পরিদর্শন শেষ করুন।
inspection-next-enter = পিস দেখুন: { $sample }-এর মধ্যে { $done } হয়েছে।
inspection-next-enter-other = { $org } লট পরিদর্শন করছে।
inspection-next-conclude = নমুনা দেখা শেষ। পরিদর্শন শেষ করুন।
inspection-next-decide = এই লট নিয়ে সিদ্ধান্ত নিন।
inspection-next-decide-other = এই লট নিয়ে ব্র্যান্ড সিদ্ধান্ত নেয়।
inspection-next-again = { $org } লট বাছাই ও মেরামত করে। তারপর আবার পরিদর্শন হয়।
inspection-next-done = এখানে আর কিছু করার নেই।
inspection-again = মেরামত করা লট পরিদর্শন করুন

## একটি পিস লেখা

inspection-corrects = এই পিস আগে লেখা হয়েছে। এখন যা সেভ করবেন তাই গোনা হবে; পুরোনো লেখা পড়ার জন্য থাকবে।
inspection-other-sort = অন্য কালারওয়ে বা সাইজ
inspection-defects = ত্রুটি
inspection-defects-how = ত্রুটি না থাকলে সোজা সেভ করুন।
inspection-classes = ক্রিটিক্যাল: কাউকে আঘাত দিতে পারে; সন্দেহ হলে এটিই বাছুন। মেজর: পোশাক নষ্ট হতে পারে বা অনেক কম কাজে লাগবে। মাইনর: যা চাওয়া হয়েছিল তা নয়, তবু পোশাক কাজে লাগে।
inspection-defect = ত্রুটি { $number }
inspection-class-of = শ্রেণি
inspection-where = কোথায়
inspection-nowhere = এই তালিকায় নেই
inspection-times = কয়টি
inspection-words = কথায়
inspection-more = আরও ত্রুটি
inspection-values = মাপা মান
inspection-other-points = অন্য পয়েন্ট: { $count }
inspection-class-missing = ক্রিটিক্যাল, মেজর বা মাইনর বেছে নিন।
inspection-times-wrong = 1 থেকে { $most } পর্যন্ত পূর্ণ সংখ্যা লিখুন।
inspection-moved-on = এর মধ্যে কেউ সেই পিস লিখেছেন। আপনারটি এখন পিস { $number }: আরেকবার সেভ করুন।
