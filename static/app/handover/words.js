/**
 * The passphrase of a hand-over file, to be told by mouth: six words of a list of 256, from the browser's random source. That is
 * 48 bits; with a million rounds for each guess it takes one machine that tries ten thousand million hashes a second about a
 * thousand years. The words are long enough to be told apart by ear.
 */
const WORDS = `
  anchor apple apron arrow autumn bacon badge baker bamboo banana banjo barley basket beach beacon beaver
  bedroom berry bicycle biscuit blanket blossom bottle boulder bramble bridge broom bucket buffalo butter button
  cabin cactus camel candle canoe canvas captain caravan carpet carrot castle cattle cedar cello cement chapel
  cherry chimney cinnamon circle circus clover cobbler coconut coffee comet compass copper coral corner cotton
  cradle cricket crystal cushion dancer desert diamond dinner dolphin donkey drawer drummer eagle evening falcon
  farmer feather ferry fiddle finger flamingo flannel forest fountain freckle frost galaxy garden garlic ginger
  giraffe glacier goblet granite grape guitar hammer harbour harvest hatchet hazel heron honey horizon hotel
  iceberg igloo island ivory jacket jaguar jasmine jelly journey jungle kangaroo kernel kettle kitchen ladder
  lantern laurel lavender lemon leopard letter library lighthouse lizard lobster magnet mango marble marigold
  market meadow melon midnight mirror monkey morning mountain muffin mushroom mustard napkin needle nickel
  noodle nutmeg oasis ocean octopus olive onion orange orchard ostrich otter oyster paddle palace pancake
  panther parade parrot pasture peanut pebble pelican pencil penguin pepper piano picnic pigeon pillow pilot
  pirate planet plaster pocket potato prairie pudding pumpkin puppet quarry quilt rabbit radish railway rainbow
  raisin ribbon river rocket saddle sailor salad salmon sandal sapphire satin saucer scarlet school season
  shadow shepherd silver singer sparrow spider spinach squirrel stable station sugar summer sunset swallow
  sycamore teacup teapot temple thimble thunder ticket tiger timber tomato tractor trumpet tulip tunnel turkey
  turtle umbrella valley vanilla velvet village violin walnut weaver whale whistle willow window winter yellow
  yogurt zebra
`.trim().split(/\s+/);

const COUNT = 6;

/** @returns {string[]} */
export function proposeWords() {
  return Array.from(crypto.getRandomValues(new Uint8Array(COUNT)), byte => WORDS[byte]);
}
