### Who did what when.

ledger-title = লেজার
ledger-what = এই স্টাইল নিয়ে যা কিছু করা হয়েছে। এখানে কিছুই বদলানো বা মোছা হয় না: প্রতিটি লেখায় আগেরটির হ্যাশ থাকে।
ledger-part = আপনার ফ্যাক্টরির সাথে সম্পর্কিত লেখাগুলো দেখছেন; অন্যগুলোর নম্বর বাদ দেওয়া।
ledger-length = লেখার সংখ্যা
ledger-end = শেষটির হ্যাশ
ledger-with = { $factory }-এর সাথে
ledger-brand-only = শুধু ব্র্যান্ডের জন্য
ledger-program = প্রোগ্রাম
ledger-each = প্রতিটি মাপ
ledger-none = এখনো কিছু করা হয়নি।

## What was done

deed-create = { $who } স্টাইলটি শুরু করেছেন।
deed-publish = { $who } রিভিশন { $revision } প্রকাশ করেছেন।
deed-withdraw = { $who } রিভিশন { $revision } প্রত্যাহার করেছেন।
deed-share = { $who } স্টাইলটি { $factory }-এর সাথে শেয়ার করেছেন।
deed-unshare = { $who } { $factory }-এর সাথে শেয়ার শেষ করেছেন।
deed-acknowledge = { $who } রিভিশন { $revision }-এর প্রাপ্তি স্বীকার করেছেন।
deed-ask = { $who } { $item } নিয়ে তুলেছেন: { $kind }, রিভিশন { $revision }।
deed-message = { $photos ->
    [0] { $who } লিখেছেন: { $kind }, { $item }।
   *[other] { $who } লিখেছেন: { $kind }, { $item }, সাথে { $photos }টি ছবি।
}
deed-thread = { $move ->
    [agree] { $who } একমত হয়েছেন: { $kind }, { $item }।
    [reopen] { $who } আবার খুলেছেন: { $kind }, { $item }।
    [grant] { $who } ছাড় দিয়েছেন: { $kind }, { $item }।
    [verify] { $who } স্যাম্পলে ঠিক হয়েছে দেখেছেন: { $kind }, { $item }।
   *[close] { $who } বন্ধ করেছেন: { $kind }, { $item }।
}
deed-thread-changed = { $who } রিভিশন { $revision }-এ এনেছেন: { $kind }, { $item }।
deed-round = রাউন্ড { $number } ({ $kind })
deed-round-request = { $who } { $round } চেয়েছেন: { $count }টি পিস, রিভিশন { $revision } মেনে।
deed-round-start = { $who } { $round } শুরু করেছেন।
deed-round-dispatch = { $who } { $round }-এর পিস পাঠিয়েছেন।
deed-round-receive = { $who } { $round }-এর পিস পেয়েছেন।
deed-round-measured = { $who } { $round } মাপা শেষ করেছেন।
deed-round-continue = রিভিশন { $revision } থাকলেও { $who } { $round } চালিয়ে গেছেন।
deed-measure = { $who } { $item }-এ { $value } মেপেছেন, { $round }-এর পিস { $piece }।
deed-measure-many = { $who } { $round }-এ { $count }টি মাপ নিয়েছেন।
deed-skip = { $who } { $item } মাপেননি, { $round }-এর পিস { $piece }: { $reason }।
deed-photograph = { $who } { $round }-এর পিস { $piece }-এর একটি ছবি যোগ করেছেন।
deed-decide = { $who } { $round } নিয়ে সিদ্ধান্ত নিয়েছেন: { $outcome }।
deed-submit = { $who } { $item } ({ $kind })-এর নমুনা { $option } জমা দিয়েছেন।
deed-approve = { $verdict ->
    [approved] { $who } { $item } ({ $kind })-এর নমুনা { $option } অনুমোদন করেছেন।
   *[rejected] { $who } { $item } ({ $kind })-এর নমুনা { $option } প্রত্যাখ্যান করেছেন।
}
deed-seal = { $who } { $round }-এর পিস সিল করেছেন: { $count }।
deed-inspection-begin = { $who } বাল্ক পরিদর্শন { $number } শুরু করেছেন। লটে পিস: { $count }।
deed-inspect = { $who } বাল্ক পরিদর্শন { $number }-এ পিস { $piece } দেখেছেন।
deed-inspect-many = { $who } বাল্ক পরিদর্শন { $number }-এ পিস দেখেছেন: { $count }।
deed-inspection-conclude = { $who } বাল্ক পরিদর্শন { $number } শেষ করেছেন: { $outcome }।
deed-inspection-decide = { $who } বাল্ক পরিদর্শন { $number } নিয়ে সিদ্ধান্ত নিয়েছেন: { $decision }।
deed-sign-revision = { $who } রিভিশন { $revision } সই করেছেন।
deed-sign-round = { $who } { $round }-এ সই করেছেন।
deed-sign-seal = { $who } { $round }-এর সিলে সই করেছেন।
deed-translate = { $count ->
    [one] { $who } { $count }টি লেখা { $language }-এ অনুবাদ করেছেন।
   *[other] { $who } { $count }টি লেখা { $language }-এ অনুবাদ করেছেন।
}
deed-translate-message = { $who } { $item }-এর { $kind }-এর একটি বার্তার পাশে { $language } অনুবাদ দিয়েছেন।
deed-erase = কারো নাম, বার্তা ও ছবি মুছে ফেলা হয়েছে। হ্যাশগুলো আছে।
