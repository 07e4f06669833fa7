### 'broodshelf doctor': o que foi visto, e como está. Lê-se “o quê: o que foi achado”.

## Como está: uma marca antes de cada linha.

doctor-good = bem
doctor-look = olhar
doctor-bad = MAL

## O que foi visto.

doctor-about-data-folder = pasta de dados
doctor-about-disk = disco
doctor-about-revoked = telefones e passes retirados
doctor-about-marks = marcas
doctor-about-set-aside = posto de lado
doctor-about-database = base de dados
doctor-about-database-role = papel na base de dados
doctor-about-households = casas
doctor-about-history = histórico
doctor-about-push-key = chave de avisos
doctor-about-nudger = processo de avisos
doctor-about-mail = e-mail
doctor-about-proxy = proxy
doctor-about-public-address = endereço público
doctor-about-certificate = certificado
doctor-about-server = servidor
doctor-about-clock = relógio

## O que foi achado.

doctor-folder-missing = { $path } ainda não existe; o primeiro arranque cria
doctor-folder-good = é possível escrever em { $path }
doctor-folder-locked = este usuário não pode escrever em { $path }; mude o dono
doctor-disk = há { $mib } MiB livres; um disco cheio recusa anotações
doctor-revoked-unreadable =
    { $n ->
        [one] { $n } linha
       *[other] { $n } linhas
    } de { $path } sem leitura possível; o próximo arranque guarda uma cópia e tudo o que se pode ler. Antes de repor uma cópia mais antiga, ponha de volta o arquivo da mais recente
doctor-mark-unreadable = não é possível ler { $path }; no próximo arranque os telefones recebem tudo de novo
doctor-was-set-aside = { $path } estava danificado e foi posto de lado; olhe, guarde ou retire
doctor-database-gone = falta, embora houvesse aqui uma estante; 'broodshelf restore FILE' repõe uma cópia
doctor-database-none = ainda não há; o primeiro arranque cria
doctor-database-silent = não responde: { $error }; está em funcionamento?
doctor-database-damaged = está danificada ({ $path }): guarde o arquivo, depois reponha uma cópia
doctor-database-unsound = está danificada: { $found }; reponha uma cópia
doctor-database-schema = o esquema é { $at }, esta versão quer { $head }; 'broodshelf migrate' resolve
doctor-database-empty = o esquema está vazio, esta versão quer { $head }; 'broodshelf migrate' resolve
doctor-database-good = responde, tabelas: { $n }, esquema { $at }
doctor-role-free = este papel pode passar por cima da segurança por linha (row-level security); dê ao servidor um próprio (docs/self-hosting.md)
doctor-role-good = a segurança por linha (row-level security) limita a uma casa de cada vez
doctor-households = { $n } neste servidor
doctor-history =
    { $households ->
        [one] num ano vieram { $n } mudanças de { $households } casa; com histórico e respostas cerca de { $kib } KiB de texto, mais os índices (desbastado após 400 dias: self-hosting.md)
       *[other] num ano vieram { $n } mudanças de { $households } casas; com histórico e respostas cerca de { $kib } KiB de texto cada uma, mais os índices (desbastado após 400 dias: self-hosting.md)
    }
doctor-history-some = num ano vieram cerca de { $n } mudanças de cerca de { $households } casas, calculado a partir de { $looked } delas; com histórico e respostas cerca de { $kib } KiB de texto cada uma, mais os índices (desbastado após 400 dias: self-hosting.md)
doctor-key-none = ainda não há; o primeiro arranque cria
doctor-key-wrong = { $file } não contém uma chave P-256 em PEM; reponha a antiga a partir da cópia, ou o próximo arranque cria uma nova, que nenhum telefone ouve ainda
doctor-key-changed =
    foi mudada: { $n ->
        [one] { $n } telefone não ouve nada até o app ser aberto nele
       *[other] { $n } telefones não ouvem nada até o app ser aberto neles
    }; melhor repor o { $file } antigo a partir da cópia
doctor-key-good = { $key }…, só o dono pode ler
doctor-key-sealed = { $key }…, selada na base de dados
doctor-nudger-never = nunca funcionou aqui; 'broodshelf serve' arranca um
doctor-nudger-ahead = funcionou por último { $s } s no futuro: o relógio desta máquina foi atrasado
doctor-nudger-good = funcionou há { $s } s e nada espera
doctor-nudger-late = funcionou por último há { $s } s, ou há avisos à espera; 'broodshelf serve' está em funcionamento?
doctor-mail-refused = { $server } não nos aceita: { $error }; veja BROODSHELF_SMTP_*
doctor-mail-good = { $server } aceita o nosso e-mail
doctor-proxy-good = o endereço do visitante vem dos proxies à frente: { $n }
doctor-proxy-none = BROODSHELF_TRUSTED_PROXY_HOPS é 0, por isso todos os visitantes do endereço https partilham um limite; ponha 1
doctor-address-good = { $url } é https, como os telefones precisam
doctor-address-local = { $url } só funciona nesta máquina; os telefones precisam de https (docs/self-hosting.md)
doctor-server-silent = { $url } não responde daqui como este servidor responderia ({ $error })
doctor-server-other = em { $url } responde outra coisa (versão { $version }, aqui { $here })
doctor-server-good = a versão { $version } responde em { $url }
doctor-server-unwell = ele mesmo diz que não está bem: { $told }
doctor-clock = o relógio do servidor e este diferem em { $s } s
doctor-certificate-good =
    { $n ->
        [one] esta máquina confia nele, falta { $n } dia
       *[other] esta máquina confia nele, faltam { $n } dias
    }
doctor-certificate-short = esta máquina confia nele; dura dias ou horas e o proxy renova-o, como com uma autoridade própria
doctor-certificate-late =
    { $n ->
        [one] falta só { $n } dia e ninguém o renovou
       *[other] faltam só { $n } dias e ninguém o renovou
    }; veja o registo do proxy: as portas 80 e 443 do nome têm de chegar a ele (docs/https.md)
doctor-certificate-name = ninguém aqui conhece o nome { $host }; ponha-o onde lhe deram o nome ou no seu router (docs/https.md)
doctor-certificate-port = { $host } não responde daqui na porta { $port }; o proxy está a funcionar e o router leva a porta até ele?
doctor-certificate-plain = { $host } fala http sem cifra na porta { $port }: ponha à frente um proxy com certificado (docs/https.md)
doctor-certificate-expired = o certificado de { $host } caducou, ou o relógio desta máquina está errado; o proxy tem de o renovar
doctor-certificate-other-name = o certificado é de outro nome que não { $host }; dê este nome ao proxy, ou ponha o dele em BROODSHELF_PUBLIC_URL
doctor-certificate-authority = esta máquina não conhece quem assinou o certificado de { $host }; os telefones só o conhecem onde instalou a sua própria autoridade (docs/https.md, o quinto caminho)
doctor-certificate-hello = { $host } cortou na porta { $port } antes de mostrar um certificado; veja o registo do proxy
