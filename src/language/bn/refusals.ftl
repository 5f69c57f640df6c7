### Why an act is refused, and the way on.

## Publishing and withdrawing

refused-section-moved = আপনি পাতা খোলার পর অন্য কেউ { $count }টি অংশ সংরক্ষণ করেছে। নিচের নতুন লেখা পড়ে প্রকাশ করুন।
refused-errors-remain = { $count }টি ভুল বাকি। নিচেরগুলো ঠিক করে প্রকাশ করুন।
refused-warning-reason-missing = { $count }টি সতর্কতার কারণ নেই। ঠিক করুন, অথবা কেন রাখা হলো লিখুন। কারণ রিভিশনে ছাপা হবে।
refused-reason-missing = কারণ লিখুন। পরে অন্যরা পড়বে।
refused-draft-unchanged = ড্রাফট রিভিশন { $revision }-এর মতোই। আগে কিছু বদলান।
refused-must-fix-unchanged = { $count }টি সম্মত আবশ্যক সংশোধন ড্রাফটে বদলানো হয়নি। বদলান, ছাড় দিন, অথবা বন্ধ করুন।
refused-already-withdrawn = এই রিভিশন আগেই প্রত্যাহার করা হয়েছে।
refused-not-current = এটি চলতি রিভিশন নয়। চলতি রিভিশন { $revision }। সেখানে কী বদলেছে পড়ুন।
refused-none-current = এটি চলতি রিভিশন নয়, এবং এখন কোনোটিই চলতি নেই: নতুনটি প্রত্যাহার করা হয়েছে। ব্র্যান্ড নতুন প্রকাশ করা পর্যন্ত অপেক্ষা করুন।
refused-not-shared = এই স্টাইল এখন ফ্যাক্টরির সাথে শেয়ার করা নেই। ব্র্যান্ড আবার শেয়ার করতে পারে।
refused-already-acknowledged = আপনার ফ্যাক্টরি আগেই এই রিভিশনের প্রাপ্তি স্বীকার করেছে।

## Whose move it is

refused-only-brand = শুধু ব্র্যান্ড এটি করতে পারে।
refused-only-factory = শুধু ফ্যাক্টরি এটি করতে পারে।
refused-not-the-asker = শুধু যিনি জিজ্ঞেস করেছেন, বা তাঁর প্রতিষ্ঠানের প্রধান, এটি করতে পারেন।
refused-only-brand-closes = শুধু ব্র্যান্ড এটি বন্ধ করতে পারে। এটি: { $kind }।
refused-other-side-first = অন্য পক্ষ এখনো উত্তর দেয়নি। উত্তরের অপেক্ষা করুন।

## Threads

refused-thread-not-in = এখন এটি করা যাবে না। আলোচনার অবস্থা: { $state }।
refused-thread-closed = এই আলোচনা বন্ধ। আবার খুলুন, অথবা নতুন প্রশ্ন করুন।
refused-no-such-move = এই ধরনের আলোচনায় এটি করা যায় না: { $kind }।
refused-item-unchanged = রিভিশন { $revision } এটি বদলায়নি। আগে ড্রাফটে বদলে প্রকাশ করুন।
refused-sample-too-old = স্যাম্পলটি রিভিশন { $revision }-এর আগে বানানো। সেই রিভিশন বা তার পরের স্যাম্পল মাপুন।

## Rounds

refused-round-not-in = এখন এটি করা যাবে না। রাউন্ডের অবস্থা: { $state }।
refused-nothing-measured = এখনো কিছু মাপা হয়নি। আগে অন্তত একটি পিস মাপুন।
refused-only-corrections = রাউন্ডের সিদ্ধান্ত হয়ে গেছে। এখন মাপ শুধু ঠিক করা যায়, যোগ করা যায় না।
refused-pieces-missing = কোন সাইজের কত পিস লিখুন: অন্তত একটি, { $most }-এর বেশি নয়, এবং শুধু এই রিভিশনের সাইজ।
refused-substitutes-missing = কোন উপকরণের বদলে কোনটি, তা লিখুন।
refused-changes-missing = কী বদলাতে হবে বলুন: অন্তত একটি, কথায় লিখে।
refused-critical-out = { $count }টি জরুরি পয়েন্ট টলারেন্সের বাইরে। আবার বানাতে বলুন, পরিবর্তন হিসেবে লিখুন, অথবা ছাড় দিন।
refused-newer-revision-needed = আগের রাউন্ড পরিবর্তনসহ অনুমোদিত। আগে এই পরিবর্তনসহ রিভিশন { $revision }-এর পরের রিভিশন প্রকাশ করুন।
refused-no-newer-revision = এর চেয়ে নতুন রিভিশন নেই।
refused-nothing-to-approve = এই রিভিশনে এটির অনুমোদন লাগে না। কী কী লাগে তার তালিকা দেখুন।
refused-photo-missing = একটি ছবি যোগ করুন: নমুনা অন্তত একটি ছবি দেখে বিচার করা হয়।
refused-option-decided = এই নমুনার সিদ্ধান্ত হয়ে গেছে: { $verdict }। অন্য নমুনা অন্য সিদ্ধান্ত পায়।
refused-only-owner = শুধু ব্র্যান্ডের মালিক স্যাম্পল সিল করেন।
refused-already-sealed = এই রাউন্ডের পিস আগেই সিল করা হয়েছে।
refused-too-early-to-seal = এই রাউন্ডের ধরন: { $kind }। প্রি-প্রোডাকশন বা টপ অব প্রোডাকশন রাউন্ড থেকে স্যাম্পল সিল করা হয়।
refused-round-not-approved = এই রাউন্ড: { $state }। অনুমোদিত রাউন্ড থেকে স্যাম্পল সিল করা হয়।
refused-questions-before-sealing = প্রশ্ন খোলা আছে: { $count }। উত্তর দিন; যিনি প্রশ্ন করেছেন তিনি বন্ধ করবেন।
refused-must-fix-unverified = অবশ্যই ঠিক করতে হবে এমন যা কেউ স্যাম্পলে ঠিক হতে দেখেনি: { $count }। স্যাম্পলে যাচাই করুন, নয়তো ছেড়ে দিন।
refused-size-set-missing = এই সাইজ ও চার্টের কোনো সাইজ সেট এই ফ্যাক্টরির সঙ্গে অনুমোদিত নয়।
refused-not-approved-yet = এখনও অনুমোদিত নয়: { $count }।
refused-substitutes-sent = পিসগুলি বিকল্প উপকরণে তৈরি। সিল করা স্যাম্পল স্পেকের উপকরণে তৈরি হয়।
refused-piece-critical-out = যে পিস রাখা হবে তাতে টলারেন্সের বাইরে বা না-মাপা ক্রিটিক্যাল পয়েন্ট: { $count }। মাপুন, ছাড় দিন, নয়তো অন্য পিস সিল করুন।
refused-seal-unsaid = অন্তত একটি পিস বেছে নিন। প্রতিটির নিজের সিল নম্বর ও কোথায় থাকবে তা লিখুন।
refused-seal-unsigned = দুই পক্ষের সই করা সিলের সাথেই বাল্ক পরিদর্শন হয়। এখনও সই করেনি: { $sides }।
refused-lot-unsaid = লটে কোন কালারওয়ে ও সাইজের কত পিস লিখুন: অন্তত একটি, মোট { $most }-এর বেশি নয়, শুধু এই রিভিশনের।
refused-not-for-rework = ব্র্যান্ড সেই লট মেরামতে ফেরত পাঠায়নি। শুধু তেমন লট আবার পরিদর্শন হয়।
refused-inspected-again = সেই লটের আবার পরিদর্শন চলছে।
refused-lot-grown = মেরামত করা লটে কোনো কালারওয়ে ও সাইজে আগের চেয়ে বেশি পিস থাকে না।
refused-inspection-not-in = এখন এটি করা যাবে না। পরিদর্শনের অবস্থা: { $state }।
refused-piece-unsaid = কোন পিস বলুন: 1 থেকে { $most } পর্যন্ত নম্বর, আর লটে ওই কালারওয়ে ও সাইজের যত আছে তার বেশি নয়।
refused-piece-beyond = নমুনায় { $sample } পিস। তার বাইরের পিস শুধু ক্রিটিক্যাল ত্রুটির জন্য লেখা হয়।
refused-piece-moved = পেজ খোলার পর কেউ এই পিস লিখেছেন। সেটি পড়ুন, তারপর আপনারটি গোনা হলে আবার সেভ করুন।
refused-defect-unsaid = ত্রুটি কোথায়, বা কী, কথায় লিখুন।
refused-pieces-uninspected = নমুনার যে পিস এখনও দেখা হয়নি: { $count }। আগে সেগুলি দেখুন।
refused-lot-rejected = লট প্রত্যাখ্যাত, ছাড়পত্র দেওয়া যায় না। ছাড় দিন, ফেরত পাঠান, বা নেবেন না।
refused-nothing-to-concede = লট গ্রহণ হয়েছে: ছাড় দেওয়ার কিছু নেই। ছাড়পত্র দিন, ফেরত পাঠান, বা নেবেন না।
refused-critical-in-bulk = ক্রিটিক্যাল ত্রুটিযুক্ত পিস: { $count }। এমন লট শুধু ফেরত পাঠানো বা না নেওয়া যায়।

## Signing

refused-open-questions = { $count }টি প্রশ্ন খোলা। উত্তর দিন; যিনি জিজ্ঞেস করেছেন তিনি বন্ধ করবেন। তারপর সই করুন।
refused-must-fix-open = { $count }টি আবশ্যক সংশোধন এই রিভিশনে বদলানো হয়নি, ছাড়ও দেওয়া হয়নি। ব্র্যান্ডকে বদলে প্রকাশ করতে হবে, অথবা ছাড় দিতে হবে।
refused-same-person-both-sides = আপনি এই স্টাইলে অন্য পক্ষের হয়ে সই করেছেন। একজন দুই পক্ষের হয়ে সই করতে পারেন না: অন্য কাউকে সই করতে হবে।
refused-already-signed = আপনার পক্ষ আগেই সই করেছে।
refused-not-acknowledged = আগে এই রিভিশনের প্রাপ্তি স্বীকার করুন, তারপর সই করুন।
refused-nothing-decided = সই করার মতো সিদ্ধান্ত এখনো নেই। আগে ব্র্যান্ডকে সিদ্ধান্ত নিতে হবে।
refused-role-does-not-sign = আপনার ভূমিকায় সই করা যায় না। আপনার প্রতিষ্ঠানের যিনি পারেন তাঁকে বলুন।
refused-screen-moved = আপনি পাতা খোলার পর এটি বদলেছে। আবার পড়ে সই করুন।
