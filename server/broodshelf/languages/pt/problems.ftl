### Por que o servidor não pôde fazer o que foi pedido. Cada frase diz o que estava errado e o que fazer.
### O que está num telefone por enviar fica lá: nenhuma frase deve soar como se algo se tivesse perdido.

## Títulos, por tipo de problema.

problem-title-failed = Algo correu mal no servidor.
problem-title-bad-request = Este endereço não entende o pedido.
problem-title-signed-out = Este telefone não tem sessão iniciada.
problem-title-not-allowed = Você não pode fazer isto aqui.
problem-title-not-found = Não há nada neste endereço.
problem-title-wrong-device = A sessão é de outro aparelho; nada foi guardado.
problem-title-gone = Isto terminou.
problem-title-too-large = O pedido é grande demais.
problem-title-wrong-media-type = Envie JSON (Content-Type: application/json).
problem-title-upgrade-required = Esta cópia do app é antiga demais para o servidor; carregue de novo. No telefone nada se perde.
problem-title-store-full = Não há mais espaço no servidor; nada foi guardado.
problem-title-busy = O servidor não pode fazer isto agora; nada foi guardado.
problem-title-too-many = Tentativas demais; espere um pouco.

## O servidor

problem-unforeseen = Nada foi guardado. Tente de novo; se continuar, avise quem cuida do servidor: { $reference }.
problem-disk-full = O disco do servidor está cheio; nada foi guardado.
problem-database-locked = Outro programa segura a base de dados do servidor; nada foi guardado.
problem-database-away = A base de dados do servidor não responde; nada foi guardado.
problem-database-read-only = O servidor não pode escrever na sua base de dados; nada foi guardado.
problem-database-damaged = Uma parte da base de dados do servidor perdeu-se; nada foi guardado.
problem-no-household = Não existe essa casa neste servidor.
problem-no-file = Este arquivo não é de nenhuma versão guardada aqui; carregue o app de novo.
problem-foreign-origin = Este pedido não vem de { $url }. Abra o app nesse endereço, ou ponha em BROODSHELF_PUBLIC_URL o que você usa.
problem-keepers-only = Só um criador desta casa pode fazer isto.
problem-no-record = Não existe essa anotação nesta casa.
problem-no-place = Não existe esse lugar.
problem-no-place-yet = Não existe esse lugar. Deixe este telefone sincronizar e tente de novo.
problem-no-person-yet = Não existe essa pessoa nesta casa. Deixe este telefone sincronizar e tente de novo.

## Telefones, códigos e sessões

problem-code-used-now = Este código foi usado há um momento.
problem-claim-code-ended = Este código não é conhecido, já foi usado ou expirou. Peça um novo a quem trata do servidor ('broodshelf pair', 'broodshelf household invite').
problem-signup-closed = Este servidor não aceita agora casas novas. Pergunte a quem trata dele.
problem-signup-code-needed = Este servidor pede um código para uma casa nova. Peça um convite a quem trata dele.
problem-signup-address = Hoje começaram daqui muitas casas. Tente amanhã, ou peça um convite a quem trata do servidor.
problem-founding-incomplete = Uma casa nova precisa do seu nome, do nome dela e do fuso horário.
problem-too-many-phones-ask = Telefones demais pedem para entrar neste momento; tente de novo em breve.
problem-no-keeper = Não existe esse criador nesta casa.
problem-pairing-over = Este código expirou. Mostre um novo.
problem-pairing-used = Este código já foi usado.
problem-pairing-unknown = Nenhum telefone mostra este código agora. Os códigos duram dez minutos.
problem-device-id-taken = Este id de aparelho já está em uso; o telefone deve criar outro.
problem-device-revoked = Um criador encerrou a sessão deste telefone. O que não foi enviado pode ser exportado.
problem-session-old = Esta sessão terminou porque não foi usada por muito tempo. Faça o telefone entrar de novo.
problem-person-removed = Um criador removeu você desta casa.
problem-no-phone = Não existe esse telefone nesta casa.
problem-one-of-two = Dê { $one } ou { $other }, um dos dois.
problem-quota-address = Veio muita coisa deste endereço dentro de uma hora. O que está neste telefone fica nele e continua sozinho.
problem-quota-pass = Este passe enviou o máximo que um passe pode num dia. O que está neste telefone fica nele e segue amanhã, ou com um passe novo.
problem-quota-household = Esta casa enviou o máximo que uma pode num dia. O que está neste telefone fica nele e segue amanhã.
problem-room-records = Esta casa tem tantas anotações quantas este servidor lhe deixa ({ $most }). O que está neste telefone fica nele e segue quando houver espaço: apague o que ninguém precisa, ou pergunte a quem trata do servidor.
problem-room-pictures = Esta casa tem tantas fotos quantas este servidor lhe deixa ({ $most }). Esta fica no telefone e segue quando houver espaço: apague algumas, ou pergunte a quem trata do servidor.
problem-room-mib = Esta casa ocupa no servidor tudo o que pode ({ $most } MiB). O que está neste telefone fica nele e segue quando houver espaço: pergunte a quem trata do servidor.
room-nearly-full = Esta casa encheu { $percent } % do seu espaço no servidor: { $records } de { $most_records } anotações, { $pictures } de { $most_pictures } fotos, { $mib } de { $most_mib } MiB. Nada se perde; peça mais a quem trata do servidor antes de ficar cheio.

## Passes e calendários

problem-no-pass = Não existe esse passe.
problem-no-pass-yet = Não existe esse passe. Deixe este telefone sincronizar e tente de novo.
problem-pass-taken-back = Este passe foi retirado; crie um novo.
problem-pass-taken-back-here = O criador retirou este passe. O que este telefone não enviou pode ser exportado.
problem-pass-unknown = Este passe não é conhecido ou foi retirado. Peça um link novo ao criador.
problem-pass-ended = Este passe terminou ({ $on }).
problem-pass-ended-still-taken = Este passe terminou ({ $on }). O que foi anotado até lá ainda é aceito.
problem-pass-over = Este passe terminou ou foi retirado.
problem-pass-full = Telefones que já abriram este passe: { $n }. O criador pode remover um deles.
problem-no-feed = Este endereço de calendário não é conhecido ou foi encerrado. Crie um novo no app.

## E-mail e avisos

problem-mail-off = Este servidor não envia e-mail; quem cuida dele pode configurar isso (docs/self-hosting.md).
problem-no-mail-address = Este endereço de e-mail não serve; exemplo: name@example.org.
problem-no-mail-code = Não há código aberto para esta pessoa; peça um novo.
problem-mail-code-over = Este código terminou; peça um novo.
problem-mail-code-wrong = Não é o código que foi enviado.
problem-not-subscribed = Este telefone ainda não escuta; ligue primeiro os avisos dele.
problem-push-too-long = Este endereço de avisos não serve: passa de { $most } caracteres.
problem-push-not-https = Este endereço de avisos não serve: não é um endereço https simples na porta 443.
problem-push-unknown = Este endereço de avisos não serve: não é de um serviço conhecido. Quem cuida do servidor pode permitir mais serviços.
problem-push-private = Este endereço de avisos não serve: o nome leva a uma rede privada.
problem-push-other-key = O telefone escuta com uma chave antiga deste servidor; ligue os avisos de novo.
problem-push-taken = Outro telefone escuta neste endereço; ligue os avisos de novo para ter um próprio.
problem-push-too-many = Telefones que já escutam por você: { $n }. Encerre antes a sessão de um.

## Fotos

problem-picture-slow = Esta foto demora demais a ler.
problem-picture-not-now = O servidor não conseguiu ver esta foto agora.
problem-picture-busy = O servidor está ocupado com fotos.
problem-picture-scans = Esta foto está guardada em passagens demais.
problem-picture-unreadable = Não é uma foto JPEG que se possa ler.
problem-picture-pixels = Esta foto tem pixels demais.
problem-picture-damaged = A foto chegou danificada; envie de novo.
problem-pictures-full = As fotos desta casa enchem o seu espaço; apague algumas, ou pergunte a quem cuida do servidor.
problem-picture-not-sent = O telefone desta foto ainda não a enviou.
problem-no-picture = Não existe essa foto nesta casa.
problem-picture-itself = Envie a própria foto (Content-Type: image/jpeg).
problem-picture-large = Uma foto pode ter no máximo { $most } bytes.

## Sensores e as suas tabelas

problem-broker-and-topic = Dê um broker e um tópico, ou nenhum.
problem-no-broker = O servidor não escuta nenhum broker com esse nome.
problem-topic-not-yours = Dê um tópico completo que combine com { $wanted }.
problem-too-many-sensors = Uma casa tem no máximo { $most } sensores. Encerre um antes.
problem-topic-taken = Um sensor já escuta este tópico.
problem-bad-token = Envie a chave de um sensor que ainda valha ('Authorization: Bearer …'). Em Casa, Lugares, criam-se novas.
problem-no-sensor = Não existe esse sensor nesta casa.
problem-no-csv = A linha { $line } não é CSV: { $why }. Guarde o arquivo de novo como CSV.
problem-no-such-column =
    { $n ->
        [0] Nenhuma coluna se chama '{ $name }'; nomeie uma da primeira linha.
        [one] { $n } coluna se chama '{ $name }'; nomeie uma da primeira linha.
       *[other] { $n } colunas se chamam '{ $name }'; nomeie uma da primeira linha.
    }
problem-name-a-column = Nomeie a coluna da temperatura ou da umidade.

## Calculadoras e viagens

problem-holiday-days = Escolha um dia de volta depois do dia de partida, dentro de um ano.
problem-no-calculator = Não existe essa calculadora.
problem-input-wrong = Com isto não se pode calcular: { $why }.
problem-no-input = { $calculator } não tem a entrada { $name }.
problem-input-number = { $name } deve ser um número.
problem-input-choice = { $name } deve ser uma das opções.
problem-input-yes-no = { $name } deve ser sim ou não.
problem-out-of-range = { $what }: { $value } { $unit } não serve; deve estar entre { $low } { $unit } e { $high } { $unit }.
problem-not-a-choice = { $name } é { $value }; deve ser um de { $choices }.
problem-parts-by = Diga se as partes são em massa ({ $mass } %) ou em volume ({ $volume } %).

## Entre o app e o servidor: para quem escreve programas para ele.

problem-no-json = O conteúdo não é o JSON que este endereço aceita: { $why }.
problem-not-an-object = { $where } deve ser um objeto.
problem-body-not-an-object = O conteúdo deve ser um objeto JSON.
problem-not-a-list = '{ $where }' deve ser uma lista.
problem-not-a-uuid = '{ $where }' deve ser um UUID em minúsculas.
problem-address-not-a-uuid = O id no endereço não é um UUID.
problem-not-a-whole-number = '{ $where }' deve ser um número inteiro de { $low } a { $high }.
problem-not-a-short-text = { $where } deve ser um texto curto.
problem-not-a-flag = { $where } deve ser true ou false.
problem-not-a-pair = { $where } deve conter [ms, device] em cada caso.
problem-empty-set = { $where } deve ser um objeto com pelo menos um campo.
problem-too-many-fields = { $where } tem mais de { $most } campos.
problem-wrong-cursor = 'cursor' deve ser o que deu a última resposta, ou null.
problem-wrong-fields = Estes campos estão errados ou faltam: { $names }.
problem-wrong-auth-key = { $where } deve ser 16 bytes em base64url.
problem-wrong-point-key = { $where } deve ser um ponto P-256 não comprimido (65 bytes) em base64url.
problem-app-newer = O app deste telefone é mais novo que o servidor; atualize o servidor.
problem-too-many-operations = No máximo { $most } operações por pedido; envie o resto no próximo.
problem-too-many-bytes = Aqui são aceitos no máximo { $most } bytes.

refused-one-household = Uma casa tem um só registro de si mesma, e ele já existe.
refused-household-stays = A própria casa não pode ser apagada.
refused-let-in = Pessoas entram quando um telefone é aceito ou por um passe.
refused-no-role = Uma pessoa é criador ou fica no lugar de um; esta não é nem uma coisa nem outra.
refused-last-keeper = O último criador não pode ser removido; deixe entrar outro antes.

problem-row-no-number = “{ $cell }” não é um número.
problem-row-no-time = “{ $cell }” não é uma hora na forma escolhida.
problem-row-too-early = A hora é anterior ao ano 2000.
problem-row-not-a-number = Não contém nenhum número.
problem-row-nothing-measured = Não contém nem temperatura nem umidade.
problem-row-broken-temperature = Nenhum lugar pode ter essa temperatura.
problem-row-broken-humidity = A umidade fica fora de 0 a 100 %.
problem-row-too-old = É antigo demais.
problem-row-in-the-future = Fica no futuro.
