### Prints, and the page behind their code.

## The sheets

paper-identity = পরিচয় ও পরিবর্তন
paper-pattern = প্যাটার্ন ঘর
paper-cutting = কাটিং ও উপকরণ
paper-sewing = সেলাই
paper-artwork = আর্টওয়ার্ক
paper-labels = লেবেল ও প্যাকিং
paper-inspection = পরিদর্শন
paper-nothing = এখানে কিছু বলা নেই।
paper-left-out = সংযুক্ত নয়, কারণ মূল ফাইলগুলো একসঙ্গে { $most } MB-এর বেশি: { $names }। রিভিশনের পাতা থেকে ডাউনলোড করুন।
paper-page = পৃষ্ঠা
paper-changed = সংস্করণ { $revision }-এর পর বদলেছে; আগের মান কাটা
paper-scan = এই প্রিন্ট কি এখনও চলবে? স্ক্যান করুন।
paper-for = যার জন্য প্রিন্ট
paper-printed = প্রিন্টের সময়
paper-band-draft = খসড়া। এটি দেখে সেলাই করবেন না।
paper-band-superseded = সংস্করণ { $revision } এর জায়গায় এসেছে। এটি দেখে সেলাই করবেন না।
paper-band-withdrawn = প্রত্যাহার করা হয়েছে। থামুন। এটি দেখে সেলাই করবেন না।
paper-no-chart = এখনও মাপের ছক নেই: কিছু মান বাকি।
paper-true-size = 100 % মাপে প্রিন্ট করুন। স্কেলটি ঠিক 100 mm হতে হবে।
paper-larger = এই পৃষ্ঠা { $width } × { $height } mm, অন্যগুলোর চেয়ে বড়। বড় কাগজে বা ভাগ করে 100 % মাপে প্রিন্ট করুন।
paper-found = পাওয়া মাপ
paper-inspector = পরিদর্শক
paper-day = তারিখ
paper-pieces = পিস, স্যাম্পল বা লট
paper-stage = রাউন্ড
paper-how-to-fill = প্রতিটি মানের পাশে যা মেপেছেন তা লিখুন। পয়েন্টে অন্য কিছু না বলা থাকলে সমতলে ও ঢিলা রেখে মাপুন।

## Where a print is asked for

print-title = প্রিন্ট
print-what = আপনার বাছাই করা শিট নিয়ে একটি PDF। ড্রয়িং ও আর্টওয়ার্কের মূল ফাইল এর সঙ্গে যুক্ত থাকে।
print-language = ভাষা
print-second = দ্বিতীয় ভাষা
print-one = শুধু একটি ভাষা
print-paper = কাগজ
print-sheets = শিট
print-for = যার জন্য প্রিন্ট
print-own = ব্র্যান্ড নিজে
print-make = PDF তৈরি করুন
print-no-address = কিছু প্রিন্ট হয়নি: প্রতি পৃষ্ঠার কোড শুধু এই মেশিনেই নিয়ে যাবে। যিনি প্রোগ্রাম চালান তিনি আগে এর প্রকাশ্য ঠিকানা দেবেন।
print-no-font = কিছু প্রিন্ট হয়নি: এই মেশিনে { $letters } এর ফন্ট নেই। যিনি এটি চালান তিনি ইনস্টল করবেন: { $packages }
print-failed = PDF তৈরি করা যায়নি। কম শিট নিয়ে চেষ্টা করুন।

## The page behind the code on a print

now-title = এই প্রিন্ট কি এখনও চলবে?
now-current = চলতি
now-superseded = প্রতিস্থাপিত
now-withdrawn = প্রত্যাহৃত
now-draft = খসড়া
now-go = এই প্রিন্ট সংস্করণ { $revision }, যা এখন চলতি।
now-stop = এটি দেখে সেলাই করবেন না। সংস্করণ { $revision } আরও নতুন।
now-draft-stop = খসড়া দেখে কখনও তৈরি করা হয় না। প্রকাশিত সংস্করণের জন্য অপেক্ষা করুন।
now-changes = { $count ->
    [one] এর পরে { $count }টি পরিবর্তন
   *[other] এর পরে { $count }টি পরিবর্তন
}
now-checked = দেখা হয়েছে { $time } UTC
now-see = সংস্করণটি দেখুন
