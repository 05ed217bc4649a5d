import { functions } from "../../functions";
import { associateAll } from "../../hosts/excel/associate";

associateAll(functions);
