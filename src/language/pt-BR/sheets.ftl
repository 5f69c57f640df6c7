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

## What cannot be read

sheet-too-large = O arquivo é grande demais. Envie um de no máximo 8 MB, só com a planilha necessária.
sheet-unknown = Isto não é uma planilha. Envie um arquivo XLSX ou CSV.
sheet-unsupported = { $what } não é lido aqui. Salve como XLSX e envie.
sheet-encoding = Não dá para reconhecer as letras deste texto. Salve como “CSV UTF-8” ou como XLSX.
sheet-too-far = { $cell } fica além de { $rows } linhas e { $columns } colunas. Retire o que não é necessário.
sheet-too-many-cells = Mais de { $most } células estão preenchidas. Envie só a planilha necessária.
sheet-too-many-sheets = O arquivo tem mais de { $most } planilhas. Envie só a necessária.
sheet-too-long = { $cell } tem mais de { $most } letras.
sheet-nothing = Não há nada neste arquivo.
sheet-too-heavy = Este arquivo leva tempo demais para ler. Envie só a planilha necessária, salva como novo arquivo XLSX.
sheet-broken = O arquivo está danificado. Salve de novo e envie outra vez.
sheet-failed = O arquivo não pôde ser lido agora. Tente de novo.
