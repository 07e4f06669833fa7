caution-stings = Cette espèce pique. Une personne allergique doit se faire aider ici ; difficulté à respirer, gonflement, malaise ou vomissements après une piqûre : appelle tout de suite le numéro d’urgence.
caution-blade = Coupe les proies sur une planche, loin des doigts.
caution-dead-only = Seulement des proies fraîchement tuées : dans un tube, jamais rien de vivant.
caution-never-tilt = Ne penche et ne retourne jamais ce nid : les réplètes pendent au plafond et sont la réserve de la colonie.
caution-sting-allergy = Les piqûres de cette espèce sont connues pour de graves réactions allergiques. Allonge la personne à plat, utilise un stylo d’adrénaline s’il y en a un, et appelle le numéro d’urgence. Ne t’occupe jamais de cette colonie sans quelqu’un près de toi.
caution-bites = Les grandes ouvrières mordent et percent la peau : prends une pince ou un pinceau, pas les doigts.
caution-tint = Colorant alimentaire : du bleu sans carmin, la teinte la plus faible qui se voie, une seule colonie, un seul jour, avec de l’eau sucrée non colorée à côté. Nous n’avons trouvé ni dose publiée, ni durée, ni essai de sécurité pour les fourmis, et des éleveurs rapportent des morts avec un colorant rouge (usage courant, sans source).
caution-sprays = Elle projette de l’acide formique : tiens tes yeux loin de l’ouverture et aère la pièce.
