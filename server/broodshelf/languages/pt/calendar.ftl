### O calendário: um evento por ronda, num quadrinho da semana.

calendar-summary = { $needs } para { $colony }
calendar-summary-many = { $needs } para { $n } colônias
calendar-now = Agora: { $what }
calendar-line = { $colony }: { $needs }
