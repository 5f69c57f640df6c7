### People, factories and invitations.

people-title = Pessoas
people-name = Nome
people-role = Função
people-org = Organização
people-acts = O que você pode fazer
people-left = sem acesso
people-new-link = Novo link
people-end = Encerrar o acesso
people-end-what = { $name } sai de todos os aparelhos na hora e não pode mais entrar. O que escreveu e assinou permanece. Isto não se desfaz: para ter essa pessoa de volta, convide-a de novo.
people-add = Convidar alguém
people-add-button = Gerar um link
people-inspector = Um inspetor de terceiros entra na fábrica cujos lotes inspeciona. Lê o que essa fábrica lê: suas revisões, conversas e rodadas; nem preços nem outra fábrica.
people-factory = Adicionar uma fábrica
people-factory-name = Nome da fábrica
people-factory-button = Adicionar fábrica
people-link-for = Um link para { $name }
people-link-how = Envie este link só a essa pessoa. Funciona uma vez, dentro de sete dias. Você só o vê agora.
people-link-label = Link
people-link-qr = Ou leia com o celular da pessoa
people-link-unreachable = Este endereço só abre nesta máquina. Inicie o programa com --public-url para gerar links para outros.
