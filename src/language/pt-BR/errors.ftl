### What went wrong, and the way out.

## A measurement that cannot be read

length-empty = Nada foi digitado. Escreva uma medida, como 28, 28.5 ou 28 1/2.
length-not-a-number = “{ $typed }” não é uma medida. Escreva como 28, 28.5 ou 28 1/2.
length-unknown-unit = “{ $typed }” tem uma unidade desconhecida. Use cm, mm ou inch.
length-unit-missing = “{ $typed }” está sem unidade, e a ficha ainda não tem uma. Escolha a unidade no cabeçalho ou escreva aqui: 28 cm.
length-may-be-thousands = “{ $typed }” pode ser lido de duas maneiras. Escreva sem sinal de milhar ou com mais um decimal.
length-zero-divisor = “{ $typed }” é uma fração de zero. Escreva como 28 1/2.
length-fraction-not-proper = “{ $typed }” tem uma fração que não é menor que um. Escreva como 28 1/2.
length-too-fine = “{ $typed }” é fino demais para ser guardado com exatidão. Escreva menos decimais.
length-too-long = “{ $typed }” é mais longo que um quilômetro. A unidade está certa?

## A grade rule that cannot be read

grade-unreadable = “{ $piece }” não é uma regra de graduação. Escreva 2 (todos os tamanhos), XS-L 2, L-2XL 2.5 (por tamanhos), same (igual), XS=50, S=52 (valores) ou =C - 1.5 (a partir do ponto C).
grade-two-readings = “{ $piece }” pode ser lido de duas maneiras. Dois tamanhos ou dois pontos têm o mesmo código ou letra.
grade-unknown-size = “{ $size }” não é um dos tamanhos.
grade-size-twice = O tamanho “{ $size }” tem dois valores.
grade-unknown-point = “{ $text }” não começa com a letra de um ponto. Escreva =C - 1.5.
grade-too-few-sizes = Ainda não há dois tamanhos. Digite os tamanhos primeiro ou escreva: same.

## Forms

error-missing = Escreva algo aqui.
error-text-long = Longo demais. Escreva no máximo { $most } letras.
error-number-taken = Outro modelo tem este número. Escolha outro.
error-size-code-signs = Um código de tamanho não pode ter vírgula, ponto e vírgula ou sinal de igual: as regras de graduação precisam deles.
error-screen = “{ $typed }” não é uma cor de tela. Escreva como #1f2a3c.
error-washes = Escreva quantas lavagens: 1 a 99.
error-name-missing = Escreva um nome.
error-name-long = O nome é longo demais. Escreva no máximo 100 letras.
error-login-missing = Escreva um e-mail ou nome para entrar.
error-login-taken = Outra pessoa entra com este nome. Escolha outro.
error-password-short = Escreva pelo menos { $count } caracteres.
error-password-long = A senha é longa demais. Escreva no máximo 1000 caracteres.
error-password-wrong = Esta não é a sua senha.
error-place-missing = Escolha uma função.
error-kind-missing = Escolha o que é.
error-factory-missing = Escolha uma fábrica.
error-text-missing = Escreva uma mensagem.
error-photos-many = Envie no máximo { $count } fotos de cada vez.
error-decimal = “{ $typed }” não é um número. Escreva 12.5, por exemplo.
error-choice-missing = Escolha um.
incomparable-illuminants = Uma foi medida sob { $standard }, a outra sob { $sample }: tais leituras não se comparam. Meça as duas sob a mesma luz.
incomparable-observers = Uma foi medida para o { $standard }, a outra para o { $sample }: tais leituras não se comparam. Meça as duas para o mesmo observador.
incomparable-no-colour = Uma das leituras não é cor de nenhuma superfície. Confira L*, a* e b*.
incomparable-weight = Os pesos da fórmula não estão entre 0.1 e 10.
not-on-screen-no-colour = Nenhuma superfície tem esta cor. L* vai de 0 a 150, a* e b* de −200 a 200.

## Pages

problem-heading = Não deu certo
problem-heading-refused = Ainda não
problem-heading-not-found = Não encontrado
problem-home = Voltar ao que precisa de mim
problem-not-found = Não existe esta página ou ela não está compartilhada com você.
problem-sign-in = Entre primeiro.
problem-not-yours = Isto não é para a função { $role }. Peça a alguém que possa.
problem-forged = Este formulário é antigo demais ou não foi enviado deste site. Abra a página de novo e envie outra vez.
problem-bad-form = O que foi enviado não pode ser lido. Abra a página de novo e tente outra vez.
problem-too-large = Isto é grande demais para enviar.
problem-too-many-tries = Tentativas erradas demais. Espere um quarto de hora.
problem-fault = Algo quebrou do nosso lado. Nada do que já estava salvo se perdeu. Informe este número a quem mantém o Fellseam: { $reference }

way-on-thread = Abrir a conversa { $number }
way-on-current = Abrir a revisão { $revision }
way-on-publish = Verificar o rascunho de novo
way-on-style = Voltar ao modelo

## Files

upload-too-large = A imagem é grande demais. Envie uma de no máximo 50 megapixels.
upload-not-a-picture = Este arquivo não é uma imagem. Envie JPEG, PNG, WebP ou SVG.
upload-unsupported = { $what } não é um tipo de imagem que se possa mostrar. Envie JPEG, PNG, WebP ou SVG.
upload-heic = Este celular salva fotos em HEIC. Nas configurações da câmera escolha “mais compatível” (JPEG) e tire a foto de novo.
upload-too-heavy = Esta imagem demora demais para ser desenhada. Salve-a em forma mais simples e envie de novo.
upload-broken = A imagem está danificada. Salve-a de novo e envie outra vez.
upload-failed = A imagem não pôde ser preparada. Tente de novo.
