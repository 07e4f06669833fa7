## Before the keeper goes away.

holiday-title = Antes de viajar
holiday-about = Duas datas dizem que colônias não precisam de ninguém e o que completar no último dia.
holiday-leave = Você parte
holiday-back = Você volta
holiday-go = Olhar adiante
holiday-none = Ainda nenhuma colônia tem plano.
holiday-verdict-nobody = Não precisa de ninguém.
holiday-verdict-nobody-after-top-up = Não precisa de ninguém depois de completar.
holiday-visit = { $days ->
    [1] Precisa de uma visita por dia.
    [one] Precisa de uma visita a cada { $days } dia.
   *[other] Precisa de uma visita a cada { $days } dias.
  }
holiday-top-up = No seu último dia:
holiday-full = encher
holiday-travel = Se uma colônia viajar com você
holiday-pass = Criar um passe para as visitas
