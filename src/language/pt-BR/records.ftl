### The signed record of a revision or a round.

record-title = Registro assinado
record-link = Registro assinado
record-round = Rodada { $number }
record-round-head = Rodada de amostras
record-download = Baixar o registro
record-what = Quem assinou o quê e quando, com os lançamentos do livro que contam isso. O arquivo baixado traz a assinatura deste serviço e pode ser conferido em qualquer máquina, anos depois.
record-style = Modelo
record-made = Escrito em
record-digest = Resumo do que foi assinado
record-nothing = Ainda não há decisão.
record-names = Assinaturas
record-unsigned = Ninguém assinou ainda.
record-moved = Valores foram corrigidos depois desta assinatura; ela foi dada a:
record-chain = Livro
record-chain-what = O livro tinha { $count } lançamentos quando isto foi escrito. Estes contam o caso; cada um traz o resumo do anterior.
record-head = Fim do livro
record-how = Conferir
record-how-what = O programa confere o arquivo sem conexão e aponta o valor que foi alterado:
record-key = A chave pública deste serviço. Guarde uma cópia em outro lugar, para que ninguém a troque:
