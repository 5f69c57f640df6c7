### What went wrong, and the way out.

## A measurement that cannot be read

length-empty = No se escribió nada. Escriba una medida, como 28, 28.5 o 28 1/2.
length-not-a-number = “{ $typed }” no es una medida. Escríbala como 28, 28.5 o 28 1/2.
length-unknown-unit = “{ $typed }” tiene una unidad desconocida. Use cm, mm o inch.
length-unit-missing = “{ $typed }” no tiene unidad, y la ficha aún no tiene una. Elija la unidad en el encabezado o escríbala aquí: 28 cm.
length-may-be-thousands = “{ $typed }” se puede leer de dos maneras. Escríbalo sin signo de miles o con un decimal más.
length-zero-divisor = “{ $typed }” es una fracción entre cero. Escríbala como 28 1/2.
length-fraction-not-proper = “{ $typed }” tiene una fracción que no es menor que uno. Escríbala como 28 1/2.
length-too-fine = “{ $typed }” es demasiado fino para guardarse con exactitud. Escriba menos decimales.
length-too-long = “{ $typed }” es más largo que un kilómetro. ¿La unidad es correcta?

## A grade rule that cannot be read

grade-unreadable = “{ $piece }” no es una regla de escalado. Escriba 2 (todas las tallas), XS-L 2, L-2XL 2.5 (por tallas), same (igual), XS=50, S=52 (valores) o =C - 1.5 (desde el punto C).
grade-two-readings = “{ $piece }” se puede leer de dos maneras. Dos tallas o dos puntos tienen el mismo código o letra.
grade-unknown-size = “{ $size }” no es una de las tallas.
grade-size-twice = La talla “{ $size }” tiene dos valores.
grade-unknown-point = “{ $text }” no empieza con la letra de un punto. Escriba =C - 1.5.
grade-too-few-sizes = Aún no hay dos tallas. Escriba primero las tallas o escriba: same.

## Forms

error-missing = Escriba algo aquí.
error-text-long = Demasiado largo. Escriba como máximo { $most } letras.
error-number-taken = Otro modelo tiene este número. Elija otro.
error-size-code-signs = Un código de talla no puede tener coma, punto y coma ni signo igual: las reglas de escalado los necesitan.
error-screen = “{ $typed }” no es un color de pantalla. Escríbalo como #1f2a3c.
error-washes = Escriba cuántos lavados: 1 a 99.
error-name-missing = Escriba un nombre.
error-name-long = El nombre es demasiado largo. Escriba como máximo 100 letras.
error-login-missing = Escriba un correo o un nombre para entrar.
error-login-taken = Otra persona entra con este nombre. Elija otro.
error-password-short = Escriba al menos { $count } caracteres.
error-password-long = La contraseña es demasiado larga. Escriba como máximo 1000 caracteres.
error-password-wrong = Esta no es su contraseña.
error-place-missing = Elija una función.
error-kind-missing = Elija qué es.
error-factory-missing = Elija una fábrica.
error-text-missing = Escriba un mensaje.
error-photos-many = Envíe como máximo { $count } fotos a la vez.
error-decimal = “{ $typed }” no es un número. Escriba 12.5, por ejemplo.
error-choice-missing = Elija uno.
incomparable-illuminants = Una se midió bajo { $standard }, la otra bajo { $sample }: tales lecturas no se pueden comparar. Mida las dos bajo la misma luz.
incomparable-observers = Una se midió para el { $standard }, la otra para el { $sample }: tales lecturas no se pueden comparar. Mida las dos para el mismo observador.
incomparable-no-colour = Una de las lecturas no es color de ninguna superficie. Revise L*, a* y b*.
incomparable-weight = Los pesos de la fórmula no están entre 0.1 y 10.
not-on-screen-no-colour = Ninguna superficie tiene este color. L* va de 0 a 150, a* y b* de −200 a 200.

## Pages

problem-heading = No funcionó
problem-heading-refused = Todavía no
problem-heading-not-found = No se encontró
problem-home = Volver a lo que me espera
problem-not-found = No existe esta página o no se comparte con usted.
problem-sign-in = Entre primero.
problem-not-yours = Esto no es para la función { $role }. Pida a alguien que pueda.
problem-forged = Este formulario es demasiado viejo o no se envió desde este sitio. Abra la página de nuevo y envíelo otra vez.
problem-bad-form = Lo enviado no se puede leer. Abra la página de nuevo e intente otra vez.
problem-too-large = Esto es demasiado grande para enviarlo.
problem-too-many-tries = Demasiados intentos fallidos. Espere un cuarto de hora.
problem-fault = Algo falló de nuestro lado. No se perdió nada de lo ya guardado. Diga este número a quien administra Fellseam: { $reference }

way-on-thread = Abrir la conversación { $number }
way-on-current = Abrir la revisión { $revision }
way-on-publish = Revisar el borrador otra vez
way-on-style = Volver al modelo

## Files

upload-too-large = La imagen es demasiado grande. Envíe una de 50 megapíxeles como máximo.
upload-not-a-picture = Este archivo no es una imagen. Envíe JPEG, PNG, WebP o SVG.
upload-unsupported = { $what } no es un tipo de imagen que se pueda mostrar. Envíe JPEG, PNG, WebP o SVG.
upload-heic = Este teléfono guarda las fotos en HEIC. En los ajustes de la cámara elija “el más compatible” (JPEG) y tome la foto otra vez.
upload-too-heavy = Esta imagen tarda demasiado en dibujarse. Guárdela en forma más simple y envíela otra vez.
upload-broken = La imagen está dañada. Guárdela de nuevo y envíela otra vez.
upload-failed = La imagen no se pudo preparar. Intente otra vez.
