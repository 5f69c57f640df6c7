### Readiness checks: one sentence a code, check-<code>. It names the item and says what to do.

## Anywhere


## Header

check-markets-none = 未说明服装在哪里销售。请选择市场：标签和安全检查取决于此。
check-wearer-missing = 未说明服装给谁穿。请选择：安全检查取决于此。
check-languages-missing = 未列出标签语言。请填写：每个市场要求自己的语言。
check-exemption-void = 对“{ $code }”的豁免无效：须有原因和姓名，且只有绳带禁令可以豁免。请补全或删除。

## Sizes

check-size-age-missing = 这是儿童服装，以下尺码既无年龄也无身高：{ $sizes }。请填其中一项：安全检查取决于此。

## Drawings


## Points of measure


## Grade rules

check-grade-reverses = { $letter } { $name }：数值在有些尺码间增大，有些间减小；在尺码 { $size } 处转折。这是有意的吗？
check-tolerance-overlaps = { $letter } { $name }：此为关键部位，{ $from } 码的一件可能当作 { $to } 码通过：两码相差 { $step }，公差为 −{ $minus } 和 +{ $plus }。请减小公差。
check-step-coarse = { $letter } { $name }：取整单位 { $step } 大于公差的一半（−{ $minus }，+{ $plus }）。请用更小的取整单位或更大的公差。
check-steps-uneven = { $letter } { $name }：每码相差 { $exact }，但取整后到尺码 { $size } 为 { $before }，之后为 { $after }。请用更小的取整单位或其他放码。
check-grade-half-or-full = { $letter } { $name }：从第一码到最后一码，全围增大 { $growth }，同类部位约为 { $usual }。是否把半围或全围填错了？
check-value-not-positive = { $letter } { $name }：尺码 { $size } 得出 { $value }。测量值必须大于零：请改正数值或放码。
check-lengths-partial = { $letter } { $name } 随部分长度变化，但未说明 { $length }。请填写加减量；可以为 0。

## Relations between measurements

check-stretched-below-relaxed = { $item }：尺码 { $size } 自然状态为 { $relaxed }，拉开只有 { $stretched }。请改正其一。
check-neck-under-head = { $item }：尺码 { $size } 领口一周张开 { $opening }，头围 { $girth }。可能套不过头：请检查。
check-cuff-under-hand = { $item }：尺码 { $size } 袖口一周张开 { $opening }，手围 { $girth }。手可能伸不过：请检查。
check-zip-not-opening = { $item }：尺码 { $size } 拉链长 { $length }，其开口 { $point } 为 { $opening }。请改正其一。
check-cord-under-channel = { $item }：尺码 { $size } 绳长 { $length }，穿绳管 { $point } 一周为 { $channel }。请加长绳。
check-rise-and-inseam = { $item }：尺码 { $size } 裆 { $rise } 加内长 { $inseam } 不等于外长 { $outseam }。请检查这三项。
check-points-usual = { $kind }：以下部位通常需要，而没有部位标明是它们：{ $missing }。请添加，或说明你的部位是什么。
check-dimension-missing = { $item }：还需要以下各项，而没有部位标明是它们：{ $missing }。请添加。

## Parts and colourways

check-parts-none = 没有部件。请填写可以有自己颜色的部分：主面料、袖口、线。
check-colourways-none = 没有配色。请至少填写一个。

## Materials

check-claim-hundred = { $item } 写了 100 %、纯或全，而 { $material } 还有第二种纤维。欧盟和美国只允许单一纤维这样写。请修改。
check-fibre-twice = { $item }：成分中一种纤维出现两次。请合并。
check-virgin-wool = { $item }：此混纺中有新羊毛。欧盟仅在新羊毛至少占 25 % 且只有另一种纤维时允许此名称（法规 1007/2011 第 8 条）。请核对。
check-mass-disagrees = { $item }：标明 { $declared } g/m²，按纱线计算为 { $computed } g/m²。请核对两者。
check-zip-size-missing = { $item }：拉链没有长度。请填写，或选择它闭合的部位。
check-minimum-unmet = { $item }：{ $colourway } 需要 { $needed }，最小起订量为 { $minimum }（单位：{ $unit }）。请问供应商，或多订。

## Construction

check-stitch-unknown = { $item }：{ $stitch } 不在 ISO 4915 线迹表中。请核对。
check-seam-code-unlike = { $item }：{ $code } 不是 ISO 4916 的代号，或属于与所选不同的类别。请核对两者。

## Artwork

check-artwork-file-missing = { $item }：缺原始文件。请上传。
check-artwork-coarse = { $item }：按实际尺寸图片为每英寸 { $dpi } 点；通常需 { $wanted }。请上传更精细的图片。
check-artwork-live-text = { $item }：原始文件中有未转曲的文字或链接图片，在别处显示可能不同。请将文字转曲并把图片嵌入文件。
check-text-too-small = { $item }：最小字高 { $height }。{ $method } 通常从 { $least } 起才清晰。请放大。

## Labels and care

check-care-customary = 标签上没有洗护说明。欧盟和英国不要求，但买家期望有。请填写洗护和相应的标签。
check-care-harsh = { $treatments }：标签允许的超过这些物料所能承受：{ $materials }。请选更缓和的洗护。
check-label-size-missing = { $item }：缺 { $missing }。请填写。
check-label-place-missing = { $item }：未说明距接缝多远。请填写距离。
check-label-language-missing = { $item } 没有此语言的文字：{ $language }。请填写。

## Packing

check-ratio-remainder = { $item }：每包 { $pack } 件，{ $colourway } 有 { $pieces } 件，剩 { $left } 件。请改其一。

## Safety: these caution. The text of the rule, local law and a licensed laboratory decide.

check-cord-exempted = { $item }：儿童服装帽或领口有绳，且有一条规则被豁免。{ $reasons }。请由有资质的实验室判断。
check-cord-free-ends-eu = { $item }：较大儿童服装帽或领口有绳，尺码 { $sizes }。{ $rule } 禁止该处有自由端。请去掉，或说明没有自由端。
check-cord-free-missing = { $item }：儿童服装的这条绳缺 { $missing }。请填写：规则取决于此。
check-cord-long-us = { $item }：绳外露 { $free }，尺码 { $sizes }。{ $rule } 允许服装拉至最宽时为 { $most }。请剪短。
check-cord-toggled-us = { $item }：绳上有绳扣、绳头或结，尺码 { $sizes }。{ $rule } 不允许腰部和下摆有这些。请去掉。
check-cord-loose-us = { $item }：绳可被抽出，尺码 { $sizes }。{ $rule } 要求用打枣固定。请加上。
check-cord-long-eu = { $item }：绳外露 { $free }，尺码 { $sizes }。据记忆（未核对），{ $rule } 此处允许 { $most }。请查阅标准中的数值，必要时剪短。
check-cord-back-eu = { $item }：儿童服装背部有绳，尺码 { $sizes }。据记忆（未核对），{ $rule } 此处只允许系带。请查阅标准。
check-evidence-small-parts = { $item } 可能脱落，而尺码 { $sizes } 供 3 岁以下儿童。{ $rule } 要求小部件测试。请填写报告。
check-evidence-flammability = { $item }：没有燃烧速度测试。{ $rule } 可能要求测试。请填写报告，或说明为何没有。
check-evidence-sleepwear = { $item }：儿童睡衣，尺码 { $sizes }，没有燃烧测试。{ $rule } 要求测试。请填写报告。
check-evidence-nickel = { $item } 是接触皮肤的金属，没有镍测试。{ $rule } 有限量。请填写报告。
check-evidence-azo-dyes = { $item } 经染色，没有偶氮染料测试。{ $rule } 有限制。请填写报告。
check-evidence-lead = { $item }：儿童产品的辅料，尺码 { $sizes }，没有铅测试。{ $rule } 有限量。请填写报告。
