[assembly: System.Runtime.CompilerServices.InternalsVisibleTo("MomentArm.Drawing.Tests")]
