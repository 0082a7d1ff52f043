/** Words of the capacity sheet's page around the sheet. */
export const description =
  'Two probes and an airflow figure: the cooling that an air conditioner makes right now, and what it should make.';

export const noScript =
  'This sheet works its figures out in your browser, and scripts are switched off. The method, by hand, stands under How to.';
