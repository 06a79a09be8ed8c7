<sheet><section><body><heading>Plain</heading>Words.</body></section></sheet>
