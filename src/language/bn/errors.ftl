### What went wrong, and the way out.

## A measurement that cannot be read

length-empty = কিছু লেখা হয়নি। মাপ লিখুন, যেমন 28, 28.5 বা 28 1/2।
length-not-a-number = “{ $typed }” কোনো মাপ নয়। 28, 28.5 বা 28 1/2 এভাবে লিখুন।
length-unknown-unit = “{ $typed }”-এর একক চেনা নয়। cm, mm বা inch লিখুন।
length-unit-missing = “{ $typed }”-এ একক নেই, স্পেকেও এখনো নেই। হেডারে একক বাছুন, অথবা এখানে লিখুন: 28 cm।
length-may-be-thousands = “{ $typed }” দুইভাবে পড়া যায়। হাজারের চিহ্ন ছাড়া লিখুন, অথবা আরেকটি দশমিক ঘর দিন।
length-zero-divisor = “{ $typed }”-এর ভগ্নাংশে হর শূন্য। 28 1/2 এভাবে লিখুন।
length-fraction-not-proper = “{ $typed }”-এর ভগ্নাংশ একের কম নয়। 28 1/2 এভাবে লিখুন।
length-too-fine = “{ $typed }” এত সূক্ষ্ম যে হুবহু রাখা যায় না। কম দশমিক ঘর লিখুন।
length-too-long = “{ $typed }” এক কিলোমিটারের বেশি। একক ঠিক আছে কি?

## A grade rule that cannot be read

grade-unreadable = “{ $piece }” কোনো গ্রেড রুল নয়। লিখুন 2 (সব সাইজ), XS-L 2, L-2XL 2.5 (সাইজ ধরে), same (একই), XS=50, S=52 (মাপ), অথবা =C - 1.5 (C পয়েন্ট থেকে)।
grade-two-readings = “{ $piece }” দুইভাবে পড়া যায়। দুটি সাইজ বা দুটি পয়েন্টের কোড বা অক্ষর একই।
grade-unknown-size = “{ $size }” কোনো সাইজ নয়।
grade-size-twice = “{ $size }” সাইজের দুটি মাপ আছে।
grade-unknown-point = “{ $text }” কোনো পয়েন্টের অক্ষর দিয়ে শুরু হয়নি। =C - 1.5 এভাবে লিখুন।
grade-too-few-sizes = এখনো দুটি সাইজ নেই। আগে সাইজ দিন, অথবা লিখুন: same।

## Forms

error-missing = এখানে কিছু লিখুন।
error-text-long = বেশি লম্বা। সর্বোচ্চ { $most } অক্ষর লিখুন।
error-number-taken = আরেকটি স্টাইলের এই নম্বর আছে। অন্য একটি বাছুন।
error-size-code-signs = সাইজ কোডে কমা, সেমিকোলন বা সমান চিহ্ন থাকতে পারে না: গ্রেড রুলে এগুলো লাগে।
error-screen = “{ $typed }” পর্দার রং নয়। #1f2a3c এভাবে লিখুন।
error-washes = কতবার ধোয়া লিখুন: 1 থেকে 99।
error-name-missing = নাম লিখুন।
error-name-long = নাম বেশি লম্বা। সর্বোচ্চ 100 অক্ষর।
error-login-missing = সাইন ইন করার জন্য ই-মেইল বা নাম লিখুন।
error-login-taken = অন্য কেউ এই নামে সাইন ইন করেন। অন্য একটি বাছুন।
error-password-short = অন্তত { $count }টি অক্ষর লিখুন।
error-password-long = পাসওয়ার্ড বেশি লম্বা। সর্বোচ্চ 1000 অক্ষর।
error-password-wrong = এটি আপনার পাসওয়ার্ড নয়।
error-place-missing = একটি ভূমিকা বাছুন।
error-kind-missing = এটি কী তা বাছুন।
error-factory-missing = একটি ফ্যাক্টরি বাছুন।
error-text-missing = বার্তা লিখুন।
error-photos-many = একবারে সর্বোচ্চ { $count }টি ছবি পাঠান।
error-decimal = “{ $typed }” কোনো সংখ্যা নয়। যেমন 12.5 লিখুন।
error-choice-missing = একটি বেছে নিন।
incomparable-illuminants = একটি { $standard } আলোয়, অন্যটি { $sample } আলোয় মাপা: এমন রিডিং তুলনা করা যায় না। দুটিই একই আলোয় মাপুন।
incomparable-observers = একটি { $standard }-এর জন্য, অন্যটি { $sample }-এর জন্য মাপা: এমন রিডিং তুলনা করা যায় না। দুটিই একই অবজারভারের জন্য মাপুন।
incomparable-no-colour = একটি রিডিং কোনো পৃষ্ঠের রং নয়। L*, a* ও b* দেখুন।
incomparable-weight = সূত্রের ওজন 0.1 আর 10-এর মধ্যে নয়।
not-on-screen-no-colour = কোনো পৃষ্ঠের এমন রং হয় না। L* 0 থেকে 150, a* ও b* −200 থেকে 200।

## Pages

problem-heading = এটি হয়নি
problem-heading-refused = এখনো নয়
problem-heading-not-found = পাওয়া যায়নি
problem-home = আমার করণীয়তে ফিরুন
problem-not-found = এমন পাতা নেই, অথবা আপনার সাথে শেয়ার করা নেই।
problem-sign-in = আগে সাইন ইন করুন।
problem-not-yours = এটি { $role } ভূমিকার জন্য নয়। যিনি পারেন তাঁকে বলুন।
problem-forged = ফর্মটি পুরোনো, অথবা এই সাইট থেকে পাঠানো হয়নি। পাতা আবার খুলে আরেকবার পাঠান।
problem-bad-form = যা পাঠানো হয়েছে তা পড়া যায় না। পাতা আবার খুলে চেষ্টা করুন।
problem-too-large = এটি পাঠানোর জন্য বেশি বড়।
problem-too-many-tries = অনেকবার ভুল হয়েছে। পনেরো মিনিট অপেক্ষা করুন।
problem-fault = আমাদের দিকে কিছু ভেঙেছে। আগে যা সংরক্ষণ হয়েছে তা হারায়নি। যিনি Fellseam চালান তাঁকে এই নম্বর জানান: { $reference }

way-on-thread = আলোচনা { $number } খুলুন
way-on-current = রিভিশন { $revision } খুলুন
way-on-publish = ড্রাফট আবার যাচাই করুন
way-on-style = স্টাইলে ফিরুন

## Files

upload-too-large = ছবি বেশি বড়। সর্বোচ্চ 50 মেগাপিক্সেলের ছবি পাঠান।
upload-not-a-picture = ফাইলটি ছবি নয়। JPEG, PNG, WebP বা SVG পাঠান।
upload-unsupported = { $what } ধরনের ছবি দেখানো যায় না। JPEG, PNG, WebP বা SVG পাঠান।
upload-heic = এই ফোন ছবি HEIC হিসেবে রাখে। ফোনের ক্যামেরা সেটিংসে “সবচেয়ে উপযোগী” (JPEG) বেছে আবার ছবি তুলুন।
upload-too-heavy = ছবিটি আঁকতে বেশি সময় লাগে। সহজ রূপে রেখে আবার পাঠান।
upload-broken = ছবিটি নষ্ট। আবার সংরক্ষণ করে আরেকবার পাঠান।
upload-failed = ছবিটি তৈরি করা যায়নি। আবার চেষ্টা করুন।
