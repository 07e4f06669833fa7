### As calculadoras. As fontes ficam como foram publicadas.

reckon-sugar-water = Água com açúcar
reckon-dilute = Diluir mel, xarope ou geleia
reckon-cooling = Quando uma solução quente esfriou o bastante
reckon-prey = Presas para uma colônia
reckon-tube-water = Água num tubo de ensaio
reckon-brood = De ovo a operária

## Como cada uma calcula.

reckon-formula-prey = unidades = proteína necessária / (massa fresca x parte de proteína); necessária = 20 mg por g de operárias e dia
reckon-formula-sugar-water = açúcar = concentração x massa; massa = volume x densidade(concentração); mol/L = g/L / 342,2965
reckon-formula-dilute = alimento doce = concentração x massa / parte de açúcares no alimento; o resto é água
reckon-formula-cooling = T(t) = quarto + (início - quarto) exp(-k t)
reckon-formula-tube-water = difusão de Stefan do vapor pelo ar e pelo algodão até o quarto, vezes 2 para um tubo em uso
reckon-formula-brood = dias = graus-dia de uma fase / (temperatura - limiar), dia e noite metade cada

## De onde vêm a fórmula e os números.

reckon-source-prey = Macom & Porter 1995; composições de Finke 2002/2013 e USDA SR26; tamanhos e manejo: prática comum
reckon-source-sugar-water = CRC Handbook of Chemistry and Physics, sacarose, { DEGREES(20) } (em segunda mão); densidade aparente do açúcar 0,85 g/mL (de memória)
reckon-source-dilute = composições de USDA SR26; densidade como a da sacarose dessa concentração
reckon-source-cooling = lei do resfriamento de Newton; k dos recipientes é estimativa nossa, ou vem das suas duas leituras
reckon-source-tube-water = Bird, Stewart & Lightfoot (tubo de difusão); pressão de vapor com 0,1 % em relação a IAPWS; o fator de um tubo em uso: prática comum, sem fonte
reckon-source-brood = por grupo de espécies; a última linha nomeia a fonte deste

## Onde vale, e quanto pode falhar.

reckon-limits-prey = uma colônia com cria em crescimento e açúcar à disposição, medido numa espécie; outras colônias diferem até o dobro
reckon-limits-sugar-water = 0 a 67,09 % em massa, { DEGREES(20) }; em volume uma colher pode levar um décimo a mais ou a menos
reckon-limits-dilute = até os açúcares do próprio alimento; os do mel diferem da sacarose em cerca de 1 % em volume
reckon-limits-cooling = ar parado, sem tampa; o quarto pelo menos meio grau abaixo da meta
reckon-limits-tube-water = de um terço a três vezes esse tempo, por algodão, manejo e corrente de ar; leituras do seu próprio tubo são melhores
reckon-limits-brood = dentro das temperaturas estudadas para o grupo; fora delas não dá resposta
