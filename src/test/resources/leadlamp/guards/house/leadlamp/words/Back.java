package leadlamp.words;

import leadlamp.report.Page;

class Back {
}
