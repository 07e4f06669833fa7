## As palavras do primeiro arranque.

start-welcome = Cada colônia com comida, água e uma olhada.
start-what = Broodshelf faz a ronda da sua estante de formigas: o que é preciso, quanto e por quê. Funciona sem rede.
start-have-code = Tenho o código do servidor
start-join-one = Entrar numa estante
start-have-pass = Recebi um passe
start-back = Voltar
start-claim = Assumir esta estante
start-code = Código
start-code-hint = de um convite ou do servidor
start-your-name = O seu nome
start-more = Nome da estante e fuso horário
start-shelf-name = Nome da estante
start-our-shelf = A nossa estante
start-zone = Fuso horário
start-claim-it = Assumir
start-known = Boas-vindas de volta, { $name }
start-come-in = Entrar
start-join = Entrar numa estante
start-join-how = Num telefone com sessão iniciada, abra “Casa” e digite este código, ou leia o código lá.
start-waiting = À espera de um criador…
start-pass = Abrir um passe
start-pass-hint = dado pelo criador
start-open-pass = Abrir o passe
start-language = Língua

start-phone-name = { $system }: telefone ou navegador
start-phone-unnamed = Telefone ou navegador
start-handed = Uma estante foi confiada a você
start-handed-what = Com este telefone você pode cuidar de algumas colônias por alguns dias. Não é preciso conta.
start-only-a-look = { $count ->
    [one] A sua sessão é de criador, então isto é só uma olhada: o passe é para { $count } colônia ({ $from } a { $to }).
   *[other] A sua sessão é de criador, então isto é só uma olhada: o passe é para { $count } colônias ({ $from } a { $to }).
  }

## Depois da primeira colônia: o plano, e a tela inicial.

welcome-title = { $name } está na estante
welcome-plan = O plano
welcome-wait = O plano vem com a próxima conexão.
welcome-nothing = Não há nada a fazer. Deixe em sossego.
welcome-install = Ponha o app na tela inicial
welcome-why-install = Assim abre como qualquer app, funciona na estante sem rede, e guarda as suas anotações a salvo de navegadores que fazem limpeza.
welcome-installed = Já está nesta tela inicial.
welcome-go = Ir para a ronda
welcome-again = Adicionar outra colônia
welcome-ios-1 = Toque no botão de compartilhar do Safari (o quadrado com a seta).
welcome-ios-2 = Escolha “Adicionar à Tela de Início” (“Adicionar ao ecrã principal”), depois “Adicionar”.
welcome-ios-3 = Abra Broodshelf a partir de lá. Tem uma memória própria: assuma a estante ou entre nela lá, ou deixe entrar a partir do Safari em Casa, “Deixar entrar um telefone”.
welcome-android-1 = Abra o menu do navegador (três pontos).
welcome-android-2 = Escolha “Instalar app” ou “Adicionar à tela inicial” (“Adicionar ao ecrã principal”).
welcome-android-3 = Abra Broodshelf a partir de lá.
welcome-desktop-1 = Chrome ou Edge: o botão de instalar no fim da barra de endereços.
welcome-desktop-2 = Safari num Mac: Arquivo (Ficheiro), depois “Adicionar ao Dock”.
welcome-desktop-3 = Firefox num computador: basta um favorito.
welcome-now = Instalar agora
