### Sheets: what is written into them.

sheet-download = Baixar { $kind }
sheet-draft = Rascunho
sheet-base = Tamanho base { $size }
sheet-chart = Tabela de medidas
sheet-grading = Graduação
sheet-in-cm = Em cm
sheet-in-inches = Em polegadas
sheet-further = Outros valores
sheet-materials = Materiais
sheet-yes = sim
sheet-offset = Acrescentado
sheet-gap = Passo de { $from } a { $to }
sheet-what = O que é
sheet-wastage = Perda, %
sheet-needed = Necessário
sheet-kilograms = kg
sheet-pieces = Peças planejadas de cada tamanho
