# The words of the document: every value of its fixed sets, `word-SET-value`.


word-wearer-women = Women
word-wearer-men = Men
word-wearer-unisex = Unisex
word-wearer-children = Children
word-wearer-infants = Infants

word-market-eu = European Union
word-market-uk = United Kingdom
word-market-us = United States
word-market-other = Other

word-garment-joggers = Joggers
word-garment-shorts = Shorts
word-garment-t-shirt = T-shirt
word-garment-hoodie = Hoodie
word-garment-half-zip = Half-zip
word-garment-jacket = Jacket
word-garment-dress = Dress
word-garment-leggings = Leggings

word-worn-upper-outerwear = Over other clothes, upper body
word-worn-upper = Upper body
word-worn-lower = Lower body
word-worn-whole = Whole body, in one piece
word-worn-sleepwear = Sleepwear
word-worn-underwear = Underwear
word-worn-swimwear = Swimwear

word-edges-seam-to-seam = Seam to seam
word-edges-edge-to-edge = Edge to edge

word-size-system-alpha = Letters (S, M, L)
word-size-system-numeric = Numbers
word-size-system-height = By the child's height, cm

word-body-height = Height
word-body-chest-girth = Chest girth
word-body-bust-girth = Bust girth
word-body-underbust-girth = Underbust girth
word-body-waist-girth = Waist girth
word-body-hip-girth = Hip girth
word-body-neck-girth = Neck girth
word-body-head-girth = Head girth
word-body-arm-length = Arm length
word-body-inside-leg-length = Inside leg length
word-body-hand-girth = Hand girth
word-body-foot-length = Foot length

word-view-front = Front
word-view-back = Back
word-view-left = Left side (the wearer's left)
word-view-right = Right side (the wearer's right)
word-view-angle = From an angle
word-view-detail = Detail

word-path-straight = Straight
word-path-curved = Along the curve

word-closure-closed = Closed
word-closure-open = Open

word-side-left = The wearer's left
word-side-right = The wearer's right
word-side-both = Both sides

word-basis-half = Half (laid flat)
word-basis-full = Full (all the way round)
word-basis-linear = Length

word-direction-length = Along the length
word-direction-width = Across the width

word-measure-body-length = Body length
word-measure-shoulder-width = Shoulder width
word-measure-shoulder-length = Shoulder length
word-measure-across-front = Across front
word-measure-across-back = Across back
word-measure-chest = Chest width
word-measure-waist = Waist
word-measure-waist-stretched = Waist, stretched
word-measure-hip = Hip
word-measure-hem = Hem width
word-measure-hem-height = Hem height
word-measure-sleeve-length = Sleeve length
word-measure-upper-arm = Upper arm
word-measure-elbow = Elbow
word-measure-armhole = Armhole
word-measure-side-seam = Side seam
word-measure-underarm-seam = Underarm seam
word-measure-cuff = Cuff opening
word-measure-cuff-stretched = Cuff opening, stretched
word-measure-cuff-height = Cuff height
word-measure-neck-width = Neck width
word-measure-neck-opening = Neck opening
word-measure-neck-stretched = Neck opening, stretched
word-measure-neck-drop-front = Front neck drop
word-measure-neck-drop-back = Back neck drop
word-measure-collar-height = Collar height
word-measure-hood-height = Hood height
word-measure-hood-width = Hood width
word-measure-hood-opening = Hood opening
word-measure-front-opening = Front opening
word-measure-zip-length = Zip length
word-measure-front-rise = Front rise
word-measure-back-rise = Back rise
word-measure-inseam = Inseam
word-measure-outseam = Outseam
word-measure-thigh = Thigh
word-measure-knee = Knee
word-measure-leg-opening = Leg opening
word-measure-waistband-height = Waistband height
word-measure-pocket-opening = Pocket opening
word-measure-pocket-width = Pocket width
word-measure-pocket-depth = Pocket depth
word-measure-pocket-place = Place of a pocket
word-measure-gusset = Gusset
word-measure-vent = Vent height
word-measure-yoke-height = Yoke height
word-measure-skirt-length = Skirt length

word-illuminant-d50 = D50
word-illuminant-d65 = D65
word-illuminant-a = A
word-illuminant-f11 = F11

word-observer-2 = 2° observer
word-observer-10 = 10° observer

word-approval-asked = Asked for
word-approval-submitted = Lab dip sent
word-approval-approved = Approved
word-approval-rejected = Rejected

word-material-woven-fabric = Woven fabric
word-material-knitted-fabric = Knitted fabric
word-material-other-fabric = Other fabric
word-material-interlining = Interlining
word-material-padding = Padding
word-material-zip = Zip
word-material-drawcord = Drawcord
word-material-cord-tip = Cord tip
word-material-cord-stop = Cord stop
word-material-eyelet = Eyelet
word-material-elastic = Elastic
word-material-button = Button
word-material-snap = Snap
word-material-hook-and-loop = Hook and loop
word-material-buckle = Buckle
word-material-webbing = Webbing
word-material-tape = Tape
word-material-reflective = Reflective trim
word-material-thread = Thread
word-material-transfer = Transfer
word-material-patch = Patch
word-material-label = Label
word-material-packing = Packing
word-material-other = Other

word-component-main = Main fabric
word-component-contrast = Contrast fabric
word-component-rib = Rib
word-component-lining = Lining
word-component-pocketing = Pocketing
word-component-padding = Padding
word-component-coating = Coating
word-component-trimming = Trimming

word-fibre-cotton = Cotton
word-fibre-wool = Wool
word-fibre-virgin-wool = Virgin wool
word-fibre-recycled-wool = Recycled wool
word-fibre-silk = Silk
word-fibre-linen = Linen
word-fibre-hemp = Hemp
word-fibre-jute = Jute
word-fibre-ramie = Ramie
word-fibre-cashmere = Cashmere
word-fibre-mohair = Mohair
word-fibre-alpaca = Alpaca
word-fibre-angora = Angora
word-fibre-camel = Camel
word-fibre-down = Down
word-fibre-viscose = Viscose
word-fibre-modal = Modal
word-fibre-lyocell = Lyocell
word-fibre-cupro = Cupro
word-fibre-acetate = Acetate
word-fibre-triacetate = Triacetate
word-fibre-polyester = Polyester
word-fibre-polyamide = Polyamide
word-fibre-acrylic = Acrylic
word-fibre-modacrylic = Modacrylic
word-fibre-polypropylene = Polypropylene
word-fibre-polyethylene = Polyethylene
word-fibre-polyurethane = Polyurethane
word-fibre-elastane = Elastane
word-fibre-elastodiene = Elastodiene
word-fibre-elastolefin = Elastolefin
word-fibre-elastomultiester = Elastomultiester
word-fibre-aramid = Aramid
word-fibre-polylactide = Polylactide
word-fibre-chlorofibre = Chlorofibre
word-fibre-metal-fibre = Metal fibre
word-fibre-paper = Paper
word-fibre-other = Other fibre

word-yarn-tex = tex
word-yarn-dtex = dtex
word-yarn-denier = den
word-yarn-nm = Nm
word-yarn-ne = Ne

word-zip-teeth-coil = Coil
word-zip-teeth-moulded = Moulded plastic
word-zip-teeth-metal = Metal
word-zip-teeth-invisible = Invisible coil

word-zip-end-closed = Closed end
word-zip-end-open = Open end (separating)
word-zip-end-two-way = Two-way

word-cord-place-hood-neck = Hood or neck
word-cord-place-chest = Chest
word-cord-place-waist = Waist
word-cord-place-hem = Lower edge of a top
word-cord-place-legs = Leg ends
word-cord-place-sleeve = Sleeve
word-cord-place-back = Back
word-cord-place-elsewhere = Elsewhere

word-cord-ends-free = Free ends
word-cord-ends-toggled = Free ends with a toggle, tip or knot
word-cord-ends-fixed = Sewn in, no free end
word-cord-ends-loop = A closed loop

word-measured-in-metre = m
word-measured-in-square-metre = m²
word-measured-in-piece = pcs
word-measured-in-gram = g

word-consumption-marker = From the marker
word-consumption-area = From the area of the pieces
word-consumption-estimate = Estimate

word-wastage-allowance = added to what is needed
word-wastage-loss-of-input = lost of what is bought

word-minimum-style = for the style
word-minimum-colour = for each colour
word-minimum-dimension = for each size of it

word-evidence-small-parts = Small parts
word-evidence-flammability = Flammability
word-evidence-nickel = Nickel
word-evidence-azo-dyes = Azo dyes
word-evidence-lead = Lead
word-evidence-colour-fastness = Colour fastness
word-evidence-shrinkage = Shrinkage
word-evidence-strength = Strength
word-evidence-other = Other

word-wash-normal-95 = Wash at 95 °C
word-wash-normal-70 = Wash at 70 °C
word-wash-normal-60 = Wash at 60 °C
word-wash-mild-60 = Wash at 60 °C, mild
word-wash-normal-50 = Wash at 50 °C
word-wash-mild-50 = Wash at 50 °C, mild
word-wash-normal-40 = Wash at 40 °C
word-wash-mild-40 = Wash at 40 °C, mild
word-wash-very-mild-40 = Wash at 40 °C, very mild
word-wash-normal-30 = Wash at 30 °C
word-wash-mild-30 = Wash at 30 °C, mild
word-wash-very-mild-30 = Wash at 30 °C, very mild
word-wash-hand = Wash by hand, at most 40 °C
word-wash-no = Do not wash

word-bleach-any = Any bleach
word-bleach-oxygen = Only bleach without chlorine
word-bleach-no = Do not bleach

word-tumble-normal = Tumble dry, normal (80 °C)
word-tumble-low = Tumble dry, low (60 °C)
word-tumble-no = Do not tumble dry

word-air-dry-line = Dry on a line
word-air-dry-line-shade = Dry on a line in the shade
word-air-dry-line-drip = Drip dry on a line
word-air-dry-line-drip-shade = Drip dry on a line in the shade
word-air-dry-flat = Dry flat
word-air-dry-flat-shade = Dry flat in the shade
word-air-dry-flat-drip = Drip dry flat
word-air-dry-flat-drip-shade = Drip dry flat in the shade

word-iron-high = Iron, at most 200 °C
word-iron-medium = Iron, at most 150 °C
word-iron-low = Iron, at most 110 °C, no steam
word-iron-no = Do not iron

word-dry-clean-p = Dry clean, P
word-dry-clean-p-mild = Dry clean, P, mild
word-dry-clean-f = Dry clean, F
word-dry-clean-f-mild = Dry clean, F, mild
word-dry-clean-no = Do not dry clean

word-wet-clean-normal = Professional wet clean
word-wet-clean-mild = Professional wet clean, mild
word-wet-clean-very-mild = Professional wet clean, very mild
word-wet-clean-no = Do not wet clean

word-line-seam = Seam
word-line-edge = Edge
word-line-fold = Fold
word-line-centre-line = Centre line

word-seam-1 = 1 superimposed
word-seam-2 = 2 lapped
word-seam-3 = 3 bound
word-seam-4 = 4 flat
word-seam-5 = 5 decorative
word-seam-6 = 6 edge finish
word-seam-7 = 7 attached
word-seam-8 = 8 single ply

word-method-screen-print = Screen print
word-method-heat-transfer = Heat transfer
word-method-digital-print = Digital print
word-method-sublimation = Sublimation
word-method-embroidery = Embroidery
word-method-woven-patch = Woven patch
word-method-applique = Appliqué
word-method-deboss = Deboss
word-method-other = Other

word-artwork-form-vector = Lines and areas (vector)
word-artwork-form-raster = Picture (raster)
word-artwork-form-stitches = Stitch file

word-anchor-top = top
word-anchor-bottom = bottom
word-anchor-left = left (as it is read)
word-anchor-right = right (as it is read)
word-anchor-centre = centre

word-label-brand = Brand
word-label-care-composition = Care and composition
word-label-size-loop = Size loop
word-label-origin = Origin
word-label-warning = Warning
word-label-other = Other

word-label-made-woven = Woven
word-label-made-printed = Printed
word-label-made-transfer = Transfer

word-label-fold-flat = Not folded
word-label-fold-centre = Centre fold
word-label-fold-ends = Ends folded
word-label-fold-mitre = Mitre fold
word-label-fold-loop = Loop

word-driver-style = The same in all
word-driver-size = By size
word-driver-colourway = By colourway
word-driver-market = By market

word-label-content-composition = Composition
word-label-content-care = Care
word-label-content-origin = Origin
word-label-content-size = Size

word-assortment-solid = Solid: one size and colourway in a carton
word-assortment-assorted = Assorted

word-stitch-class-100 = Chainstitch of one thread
word-stitch-class-200 = Hand stitch
word-stitch-class-300 = Lockstitch
word-stitch-class-400 = Chainstitch of several threads
word-stitch-class-500 = Overedge stitch
word-stitch-class-600 = Covering stitch

word-status-verified = Checked against a published copy
word-status-seen = Seen in use, not checked against the official text
word-status-from-memory = Not checked against the official text
