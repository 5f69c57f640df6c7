### Signing in and out, setting up, invitations.

sign-in-title = Entrar
sign-in-login = E-mail ou nome de acesso
sign-in-password = Senha
sign-in-wrong = O nome ou a senha não está certo. Tente de novo.
sign-in-code = Tenho um código do meu outro aparelho
sign-in-lost = Sem senha? Peça um novo link a quem convidou você.

set-up-title = Configurar o Fellseam
set-up-what = Você é a primeira pessoa aqui. Escreva o nome da marca e o seu: você passa a ser o proprietário.
set-up-brand = Nome da marca
set-up-name = Seu nome
set-up-button = Configurar

join-title = Entrar
join-for = Este link é para { $name }
join-as = Você entra como { $role }, { $org }.
join-name = Seu nome
join-button = Entrar
join-once = O link funciona uma vez. Nada é gasto até você apertar o botão.

spent-title = Este link não funciona
spent-why = Já foi usado ou o prazo acabou.

code-title = Código do seu outro aparelho
code-label = Código
code-where = No outro aparelho, abra Minha página e escolha Mostrar um código.
code-wrong = Este código não está certo ou o prazo acabou. Gere um novo.
code-button = Entrar

me-title = Minha página
me-about = Sobre mim
me-save = Salvar
me-second = Segundo aparelho
me-second-what = Abra o Fellseam no seu celular ou computador sem um novo link.
me-second-button = Mostrar um código
me-code-title = Código para o segundo aparelho
me-code-how = Abra { $address } no outro aparelho e digite este código. Funciona uma vez, por dez minutos.
me-code-qr = Abre a página onde se digita o código
me-password = Senha
me-password-what = Com uma senha você entra sem link. Definir uma encerra as sessões nos outros aparelhos.
me-password-old = Senha atual
me-password-new = Nova senha
me-password-button = Definir senha
me-out = Sair de todos os aparelhos
me-out-what = Encerra todas as suas sessões, em todos os aparelhos.
me-out-sure = Este aparelho também sai. Para entrar de novo, você precisa da sua senha ou de um novo link.
me-out-button = Sair de todos os aparelhos
