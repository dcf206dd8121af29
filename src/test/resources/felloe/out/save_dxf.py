"""Reads a DXF file with ezdxf and saves it anew, in the version that is asked for."""
import sys

import ezdxf

document = ezdxf.readfile(sys.argv[1])
document.dxfversion = sys.argv[3]
document.saveas(sys.argv[2])
