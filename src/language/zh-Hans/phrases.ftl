### Ready sentences that both sides read in their own language: phrase-<id> of exchange/phrase.rs.

phrase-group-question = 问题
phrase-group-answer = 回复
phrase-group-fix = 必须修改
phrase-group-measuring = 测量
phrase-group-material = 物料
phrase-group-date = 日期
phrase-group-shipping = 寄送

## Questions

phrase-ask-how-measured = { $item } 怎么量？请说明从哪里量到哪里。
phrase-ask-which-right = { $item }：图和文字不一致。哪个对？
phrase-ask-photo = 请发 { $item } 的照片。
phrase-ask-larger-drawing = 请发 { $item } 的放大图。
phrase-ask-value = { $item }，尺码 { $size } 的数值不清楚。是多少？
phrase-ask-stitch = { $item } 用哪种线迹？
phrase-ask-allowance = { $item } 需要多少缝份？
phrase-ask-place = { $item } 的准确位置在哪里？从哪条缝量起？
phrase-ask-colour = { $item } 用哪个色号？
phrase-ask-revision = 我们按第 { $revision } 版做吗？
phrase-ask-order = 可以先缝 { $item } 再缝 { $other } 吗？
phrase-ask-sample = 请寄 { $item } 的样品。

## Answers

phrase-answer-yes = 是。
phrase-answer-no = 不。
phrase-answer-spec = 工艺单正确。请按工艺单做。
phrase-answer-drawing = 图正确。文字将修改。
phrase-answer-text = 文字正确。图将修改。
phrase-answer-value = { $item }，尺码 { $size }：正确数值为 { $value }。
phrase-answer-next = 下一版会修改。请等下一版。
phrase-answer-changed = 第 { $revision } 版已修改。
phrase-answer-go-on = 请继续。这不影响工作。
phrase-answer-stop = 请先停止 { $item } 的工作，直到此事解决。
phrase-answer-understood = 明白。我们照此做。
phrase-answer-allowance = { $item } 用 { $value } 缝份。
phrase-answer-distance = { $item } 放在距 { $other } { $value } 处。

## What must change

phrase-fix-large = { $item } 大了 { $value }。请改到规格。
phrase-fix-small = { $item } 小了 { $value }。请改到规格。
phrase-fix-density = { $item }：每厘米 { $count } 针。
phrase-fix-twisted = { $item } 处的缝扭曲。请缝平。
phrase-fix-puckers = { $item } 处的缝起皱。请检查线的张力。
phrase-fix-skipped = { $item } 处跳针。
phrase-fix-ends = 请剪净 { $item } 处的线头。
phrase-fix-bartack = { $item } 处缺打枣。
phrase-fix-place = { $item } 位置不对。请移动 { $value }。
phrase-fix-turned = { $item } 缝反了。
phrase-fix-sides = { $item } 左右相差 { $value }。请做成一样。
phrase-fix-colour = { $item } 的颜色不是批准的颜色。
phrase-fix-print = { $item } 处的印花开裂或脱落。
phrase-fix-stain = { $item } 处有污渍。请保持样衣干净。
phrase-fix-label = { $item } 上的文字不对。请用工艺单上的文字。

## Measuring

phrase-measured-says = { $item }：量得 { $value }，规格为 { $spec }。
phrase-measured-size = { $item }，尺码 { $size }：量得 { $value }。
phrase-measured-shrinks = { $item } 洗后缩 { $percent } %。
phrase-measured-grows = { $item } 洗后伸长 { $percent } %。
phrase-measure-again = 请重新测量 { $item }，平放，不要拉。
phrase-measured-half = { $item } 是平放量的：半围。
phrase-measured-stretched = { $item }，拉开：量得 { $value }。
phrase-measured-allowance = 纸样在 { $item } 处还需增加 { $value } 缝份。
phrase-measured-tolerance = { $item } 的公差做不到。我们能做到 { $value }。
phrase-measured-vary = 各件之间 { $item } 相差 { $value }。

## Materials

phrase-material-instead = 可以用 { $material } 代替 { $other } 吗？
phrase-material-none = { $material } 没有货。
phrase-material-arrives = { $material } 于 { $date } 到货。
phrase-material-shade = { $material } 的颜色与批准的色样不同。
phrase-material-dip-sent = { $material } 的色样已于 { $date } 寄出。
phrase-material-dip-approve = 请批准 { $material } 的色样。
phrase-material-minimum = { $material } 的最小起订量超过我们的需要。
phrase-material-width = { $material } 的幅宽为 { $value }。
phrase-material-shrinks = { $material } 缩水 { $percent } %。
phrase-material-keep = 不行。请按工艺单用 { $material }。
phrase-material-take = 可以。可以用 { $material }。
phrase-material-short = { $material }：缺 { $count } 个。

## Dates

phrase-date-ready = 样衣 { $date } 完成。
phrase-date-late = 我们晚 { $count } 天。
phrase-date-need = 我们须在 { $date } 之前拿到样衣。
phrase-date-answer = 请在 { $date } 之前回复，否则工作停止。
phrase-date-cutting = { $date } 开裁。
phrase-date-sewn = { $date } 缝完。
phrase-date-closed = 工厂 { $date } 至 { $until } 放假。
phrase-date-confirm = 请确认此日期：{ $date }。

## Shipping

phrase-ship-sent = { $date } 寄出 { $count } 件。
phrase-ship-arrived = { $date } 收到 { $count } 件。
phrase-ship-cartons = 箱数：{ $count }。
phrase-ship-missing = 包裹里少 { $count } 件。
phrase-ship-damaged = 包裹到达时已损坏。
phrase-ship-address = 请确认包裹地址。
phrase-ship-papers = 请寄清关文件。
