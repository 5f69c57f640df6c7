### Reading, comparing and sharing a published revision.

## What a signature is put to

statement-revision-factory = আমি এই রিভিশন পড়েছি। আমার ফ্যাক্টরি এটি মেনে স্টাইলটি বানাবে।
statement-revision-brand = এই রিভিশনেই আমাদের চাওয়া আছে। যা আসবে তা আমরা এটি দিয়ে বিচার করব।
statement-round-factory = আমি এই স্যাম্পল রাউন্ডের সিদ্ধান্ত পড়েছি। আমার ফ্যাক্টরি সেই মতো কাজ করবে।
statement-round-brand = এই স্যাম্পল রাউন্ড নিয়ে এটি আমাদের সিদ্ধান্ত।
statement-seal-factory = এখানে লেখা পিসগুলি সিল করা হয়েছে। আমার ফ্যাক্টরি এগুলি ও রিভিশন অনুযায়ী বাল্ক তৈরি করবে।
statement-seal-brand = এখানে লেখা পিসগুলি সিল করা হয়েছে। আমরা এগুলি ও রিভিশন দিয়ে বাল্ক বিচার করব।

## A revision

revision-number = রিভিশন { $revision }
revision-reason = কেন প্রকাশ করা হয়েছে

## What changed

changes-title = রিভিশন { $revision }-এ কী বদলেছে
changes-since = রিভিশন { $revision }-এর সাথে তুলনা।
changes-acknowledged = আপনার ফ্যাক্টরি শেষবার এটিরই প্রাপ্তি স্বীকার করেছে।
changes-none = রিভিশন { $revision }-এর পর কিছু বদলায়নি।
changes-first = এটি প্রথম রিভিশন। তুলনা করার মতো আগের কিছু নেই।
changes-compare = অন্য রিভিশনের সাথে তুলনা
changes-with = রিভিশন { $revision }-এর সাথে
changes-read = রিভিশন { $revision } পড়ুন

## The revision page

revision-what-changed = কী বদলেছে
revision-to-signatures = সই
revision-current = রিভিশন { $revision } চলতি
revision-published = { $date } তারিখে { $name } প্রকাশ করেছেন
revision-superseded = নতুন রিভিশন এসেছে
revision-superseded-stop = এটি দেখে সেলাই করবেন না।
revision-withdrawn = প্রত্যাহার করা
revision-withdrawn-why = থামুন। এটি দেখে সেলাই করবেন না: { $reason }
revision-use = রিভিশন { $revision } ব্যবহার করুন
revision-see-changes = কী বদলেছে দেখুন
revision-none-current = কোনো রিভিশন চলতি নেই। ব্র্যান্ড নতুন প্রকাশ করা পর্যন্ত অপেক্ষা করুন।
revision-original = মূল ফাইল
revision-tap = পড়তে বা জিজ্ঞেস করতে একটি অক্ষর বাছুন। ? মানে খোলা প্রশ্ন, ! মানে খোলা আবশ্যক সংশোধন।
revision-style = স্টাইল
revision-revision = রিভিশন
revision-fingerprint = ফিঙ্গারপ্রিন্ট
revision-date = প্রকাশের তারিখ
revision-by = প্রকাশ করেছেন
revision-state = অবস্থা
revision-compare = তুলনা
revision-measured = { $state } · সমান করে, না টেনে · { $edges }। কোনো পয়েন্টে আলাদা বলা থাকতে পারে।
revision-contents = এই পাতায়
revision-others = অন্য রিভিশন ও ডাউনলোড
revision-archive = পুরো রিভিশন ডাউনলোড করুন (ZIP)
revision-archive-what = এর ডকুমেন্ট ও এতে দেখানো মূল ফাইলগুলো, হুবহু।
revision-document = এই রিভিশনের ডকুমেন্ট ডাউনলোড করুন (JSON)
revision-document-what = যে বাইটগুলো থেকে ফিঙ্গারপ্রিন্ট তৈরি, ঠিক সেগুলোই।

## Acknowledging

acknowledge-not-yet = আপনার ফ্যাক্টরি রিভিশন { $revision }-এর প্রাপ্তি স্বীকার করেনি।
acknowledge-changed = আপনার ফ্যাক্টরির শেষ স্বীকার করা রিভিশন { $revision }-এর পর { $count }টি পরিবর্তন।
acknowledge-what = প্রাপ্তি স্বীকার করলে আপনি বলছেন: আমরা এই রিভিশন পড়েছি এবং শুধু এটি মেনেই কাজ করি।
acknowledge-button = রিভিশন { $revision }-এর প্রাপ্তি স্বীকার করুন
acknowledge-others = আপনার মার্চেন্ডাইজারকে প্রাপ্তি স্বীকার করতে বলুন।

## The size chart

chart-title = সাইজ চার্ট
chart-caption = সাইজ চার্ট, { $unit }
chart-units = সব মাপ { $unit }-এ। ছোট সংখ্যা { $other }-এ, শুধু মিলিয়ে দেখার জন্য।
chart-changed = নিচে দাগ দেওয়া মাপগুলো আপনার ফ্যাক্টরির শেষ স্বীকার করা রিভিশন { $revision }-এর পর বদলেছে; পুরোনো মাপ কাটা।
chart-size = সাইজ
chart-point = মাপের পয়েন্ট
chart-base = বেস
chart-tolerance = টলারেন্স

## How to measure

how-title = কীভাবে মাপবেন
how-from = শুরু
how-to = শেষ
how-way = পদ্ধতি
how-relaxed = না টেনে
how-stretched = টেনে

## Parts and colourways

parts-approximate = পর্দার রং আনুমানিক। রেফারেন্সই চূড়ান্ত।
parts-colourway = কালারওয়ে
parts-part = পার্ট

## Words beside a name

about-must-fix = { $count }টি আবশ্যক সংশোধন
about-open = { $count }টি খোলা
about-new = নতুন
about-changed = বদলেছে

## Warnings that were accepted

accepted-title = ব্র্যান্ড যেসব সতর্কতা মেনে নিয়েছে
accepted-reason = কারণ:

## Signing

sign-not-shared = এই স্টাইল এখনো কোনো ফ্যাক্টরির সাথে শেয়ার হয়নি।
sign-acknowledged = প্রাপ্তি স্বীকার { $time } UTC
