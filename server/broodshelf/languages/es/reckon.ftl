### Las calculadoras. Las fuentes quedan como se publicaron.

reckon-sugar-water = Agua azucarada
reckon-dilute = Diluir miel, sirope o mermelada
reckon-cooling = Cuándo está bastante fría una solución
reckon-prey = Presas para una colonia
reckon-tube-water = Agua en un tubo de ensayo
reckon-brood = De huevo a obrera

## Cómo calcula cada una.

reckon-formula-prey = piezas = proteína necesaria / (masa fresca x parte de proteína); necesaria = 20 mg por g de obreras y día
reckon-formula-sugar-water = azúcar = concentración x masa; masa = volumen x densidad(concentración); mol/L = g/L / 342,2965
reckon-formula-dilute = alimento dulce = concentración x masa / parte de azúcares del alimento; el resto es agua
reckon-formula-cooling = T(t) = habitación + (inicio - habitación) exp(-k t)
reckon-formula-tube-water = difusión de Stefan del vapor por el aire y el algodón hacia la habitación, por 2 en un tubo en uso
reckon-formula-brood = días = grados-día de una fase / (temperatura - umbral), día y noche la mitad cada uno

## De dónde vienen la fórmula y las cifras.

reckon-source-prey = Macom & Porter 1995; composiciones de Finke 2002/2013 y USDA SR26; tamaños y manejo: práctica común
reckon-source-sugar-water = CRC Handbook of Chemistry and Physics, sacarosa, { DEGREES(20) } (de segunda mano); densidad aparente del azúcar 0,85 g/mL (de memoria)
reckon-source-dilute = composiciones de USDA SR26; densidad como la de la sacarosa de esa concentración
reckon-source-cooling = ley de enfriamiento de Newton; k de los recipientes es estimación nuestra, o sale de tus dos lecturas
reckon-source-tube-water = Bird, Stewart & Lightfoot (tubo de difusión); presión de vapor con un 0,1 % respecto a IAPWS; el factor de un tubo en uso: práctica común, sin fuente
reckon-source-brood = según el grupo de especies; la última línea nombra la fuente de este

## Dónde vale, y cuánto puede desviarse.

reckon-limits-prey = una colonia con cría que crece y azúcar disponible, medido en una especie; otras colonias difieren hasta el doble
reckon-limits-sugar-water = 0 a 67,09 % en masa, { DEGREES(20) }; en volumen, una cuchara puede llevar una décima parte más o menos
reckon-limits-dilute = hasta los azúcares del propio alimento; los de la miel difieren de la sacarosa cerca de un 1 % en volumen
reckon-limits-cooling = aire quieto, sin tapa; la habitación al menos medio grado por debajo de la meta
reckon-limits-tube-water = de un tercio a tres veces ese tiempo, según algodón, manejo y corrientes; son mejores las lecturas de tu propio tubo
reckon-limits-brood = dentro de las temperaturas estudiadas para el grupo; fuera de ellas no da respuesta
