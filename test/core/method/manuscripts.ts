// Three manuscripts kept as they stood when their plans were checked by eye, so that work on the dishes in examples/
// does not move the expected plans.

export const pork = `Pork shoulder with leeks and cider

Serves 4 to 6
Total time: 1 hour 45 minutes

1.2 kg boneless pork shoulder, cut into 4-cm pieces
1 1/4 teaspoons table salt, divided
2 tablespoons rapeseed oil, divided
500 g leeks, white and pale green parts, sliced 2 cm thick
4 garlic cloves, minced
240 ml dry cider
2 sprigs thyme
1 tablespoon grainy mustard

1. Pat the pork dry and toss with 1 teaspoon of the salt. Heat 1 tablespoon of the oil in a 6-quart electric pressure cooker on the highest browning setting until just smoking, about 3 minutes. Brown half of the pork on two sides, 7 minutes, and transfer to a bowl. Repeat with the remaining oil and pork.

2. Add the leeks to the fat left in the pot and cook, stirring, until softened, 5 minutes. Stir in the garlic and cook for 30 seconds. Add the cider and scrape up the browned bits.

3. Return the pork and its juices to the pot with the thyme. Lock the lid and cook at high pressure for 30 minutes. Let the pressure release naturally for 15 minutes, then vent what remains.

4. Lift the pork out onto a warm dish and discard the thyme. Boil the liquid for 10 minutes until it lightly coats a spoon. Stir in the mustard and the remaining 1/4 teaspoon salt, return the pork, and serve.
`

export const beef = `Beef and tomato sauce for a crowd

Serves 6
Ready in 50 minutes

900 g beef chuck, cut into 3-cm pieces
1 1/2 tsp salt
2 tbsp olive oil
2 onions, finely chopped
4 garlic cloves, sliced
3 tbsp tomato paste
700 g tomato passata
1 tsp dried oregano
a handful of basil leaves

1. Season the beef with the salt. Heat the oil in an electric pressure cooker on high and brown the beef in two batches, 6 minutes per batch. Transfer to a plate.

2. Add the onions and cook for 5 minutes, until soft. Add the garlic and tomato paste and fry for 2 minutes.

3. Pour in the passata and the red wine, add the oregano and the beef, and lock the lid. Cook at high pressure for 35 minutes. Release the pressure naturally for 10 minutes, then vent the rest.

4. Break up the beef with a fork and simmer until thick. Tear in the basil and serve.
`

export const beans = `White bean soup with carrots and sage

Serves 6 to 8
Total time: 1 hour 30 minutes, plus overnight soaking

500 g dried white beans, soaked overnight and drained
2 tablespoons olive oil
1 large onion, chopped
3 carrots, cut into 2-cm pieces
2 sticks celery, sliced
4 garlic cloves, crushed
8 sage leaves
1.35 litres water
1 1/2 teaspoons fine salt
2 teaspoons lemon juice

1. Heat the oil in a 6-quart electric pressure cooker on medium. Add the onion, carrots and celery and cook, stirring now and then, for 6 minutes, until the onion is soft. Add the garlic and sage and cook for 1 minute.

2. Add the drained beans, the water and the salt and stir. Lock the lid and cook at high pressure for 12 minutes. Let the pressure release naturally, about 25 minutes.

3. Ladle a third of the soup into a bowl, mash it smooth and stir it back in. Simmer for 5 minutes. Stir in the lemon juice and serve.
`
